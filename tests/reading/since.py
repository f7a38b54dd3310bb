"""Labels of a value that came into the vocabulary after the tables were taught: they stand
here until the second reader is taught anew, which learns from the tables as they are."""

from typing import Final

SINCE: Final = {
    "peeing way more": "urine.more",
    "peeing gallons": "urine.more",
    "drinking tons and peeing lakes": "drinking.more, urine.more",
    "está orinando muchísimo": "urine.more",
    "hace mucha más pipí que antes": "urine.more",
    "toma agua como loco y hace mucha pipí": "drinking.more, urine.more",
    "He's peeing an awful lot and drinking for England.": "drinking.more, urine.more",
    "está tomando un montón de agua y hace mucha pipí": "drinking.more, urine.more",
}
