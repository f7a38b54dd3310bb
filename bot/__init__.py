"""slowleash: follows a pet home after orthopaedic surgery, by chat."""

__version__ = "0.1.0"
