"""What people write in the histories, and what each may tell."""

from __future__ import annotations

from .facts import Saying


def _of(
    text: str, may: str = "", holds: str = "", state: str = "", *, just: bool = False
) -> Saying:
    return Saying(text, frozenset(may.split()), holds, state, just)


_WELL = ("energy mobility appetite incision stool urine pain weight_bearing drinking swelling"
         " licking vomiting")  # fmt: skip
DOSES = (
    _of("gave it", "dose"),
    _of("gave it at 1 pm", "dose"),
    _of("gave the carprofen at 8", "dose"),
    _of("se lo di a las 7", "dose"),
    _of("ya le di el carprofeno", "dose"),
    _of("just gave him the gabapentin", "dose", just=True),
    _of("just now gave the carprofen I forgot last night", "dose", just=True),
    _of("gave the carprofen", "dose"),
    _of("gave the carprofen", "dose"),
    _of("gave it twice", "dose swallowed", "any"),
    _of("gave the carprofen twice by mistake", "dose swallowed", "carprofen"),
    _of("he refused the cephalexin", "dose"),
    _of("not yet", "dose appetite cone"),
    _of("by mistake", ""),
    _of("all his pills are in", "dose"),
    _of("yes", "dose ice warm_compress massage walk cone appetite incision energy stool urine pain"
        " weight_bearing licking drinking swelling vomiting"),
    _of("done", "dose ice warm_compress massage walk cone appetite incision energy stool urine"
        " pain weight_bearing licking drinking swelling"),
)  # fmt: skip
SIGNS = (
    _of("threw up twice", "vomiting", "anti"),
    _of("she threw up once", "vomiting dose"),
    _of("vomitó dos veces", "vomiting", "anti"),
    _of("black poop", "stool", "anti"),
    _of("her poop is black and she is not eating", "stool appetite", "anti"),
    _of("he is limping a bit but ate well", "weight_bearing appetite mobility"),
    _of("the cut looks clean", "incision"),
    # Said to one question it answers that one, as "yes" does.
    _of("hes fine", _WELL),
    _of("ate well and sleeps", "appetite energy"),
    _of("tiene diarrea", "stool", "anti"),
    _of("he fell off the sofa and now wont use the leg", "mishap weight_bearing"),
)  # fmt: skip
ALARMS = (
    _of("he collapsed", "energy", "mouth", "emergency"),
    _of("her gums are white and she breathes heavily", "gums breathing", "mouth", "emergency"),
    _of("she ate the whole bottle of pills", "swallowed dose", "mouth", "emergency"),
    _of("se desmayó", "energy", "mouth", "emergency"),
)
DEATHS = (
    _of("he died last night", "life", "", "death"),
    _of("murió anoche", "life", "", "death"),
)
NOTHING = (
    _of("I'll do it in 20 minutes"),
    _of("we leave in 30"),
    _of("I hope he eats tonight"),
    _of("should I worry if he vomits?"),
    _of("can I give the carprofen now?"),
    _of("thank you!"),
    _of("gracias"),
    _of("should I give it twice if he throws up?"),
    _of("my other dog died last year"),
    _of("what is next"),
    _of("menu"),
    _of("in an hour"),
    _of("undo"),
    _of("deshacer"),
    _of("false alarm"),
    _of("we are on our way"),
    _of("the thing with the other one"),
    _of("voy a darle la pastilla luego"),
    _of("38.5", "temperature"),
)
LATER = (
    _of("I did not give it", "dose"),
    _of("no se la di", "dose"),
    _of("gave it all", "dose appetite"),
    _of("ya se lo di todo", "dose appetite"),
    _of("remind me in 2 hours"),
    _of("recuérdeme en una hora"),
    _of("ahorita que despierte le doy la pastilla"),
    # Of one that nobody said had died it answers the one question that is open, as "hes fine".
    _of("sorry wrong chat, he is alive and well", _WELL, "", "alive"),
    _of("sí", "dose ice warm_compress massage walk cone appetite incision energy stool urine pain"
        " weight_bearing licking drinking swelling vomiting"),
    _of("no", "dose ice warm_compress massage walk cone appetite licking pain swelling vomiting"
        " stool urine drinking"),
    _of("the same one", f"dose {_WELL}"),
    _of("somewhat better, thanks", "energy mobility pain weight_bearing appetite swelling"
        " incision"),
)  # fmt: skip
"""Answers to what is open: a prompt, a question of the bot's or of staff's."""
SAYINGS = (*DOSES, *DOSES, *SIGNS, *ALARMS, *DEATHS[:1], *NOTHING)

COMMANDS = (
    "/hold Biscuit carprofen",
    "/hold Biscuit walks",
    "/hold Biscuit everything",
    "/hold Biscuit everything by mouth",
    "/release Biscuit carprofen",
    "/release Biscuit anti-inflammatories",
    "/release Biscuit everything by mouth",
    "/release Biscuit gabapentin",
    "/release Biscuit walks",
    "/board",
    "/log Biscuit",
    "/end Biscuit",
)
STAFF_WORDS = (
    "Offer some chicken and call us if she is not better.",
    "Give no more carprofen until we see her.",
    "All normal after surgery, go on as planned.",
)
