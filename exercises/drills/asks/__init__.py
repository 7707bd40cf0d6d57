"""The ways of asking: what a learner may answer, and how what they typed is read.

    Ask
     ├── Choice     one of some options
     ├── Several    any of some options
     ├── Table      a choice in every cell of a table
     ├── Order      a position for each step
     ├── Dial       one position of a control
     ├── Moment     a time code, typed
     ├── Amount     a number with a unit, typed
     ├── FreeText   some sentences
     └── Picture    a picture, sent as a file

Each is drawn by the template `exercises/asks/<form>.html`. A new way of asking is a class
here, an entry in `FORMS` and a template.
"""

from collections.abc import Mapping

from exercises.drills.asks.amount import Amount
from exercises.drills.asks.ask import AnswerRefused, Ask, Json, Option, no_answer
from exercises.drills.asks.choice import Choice
from exercises.drills.asks.dial import Dial
from exercises.drills.asks.free_text import FreeText
from exercises.drills.asks.moment import Moment
from exercises.drills.asks.order import Order
from exercises.drills.asks.picture import SentPicture
from exercises.drills.asks.several import Several
from exercises.drills.asks.table import Column, Table

__all__ = [
    "FORMS",
    "Amount",
    "AnswerRefused",
    "Ask",
    "Choice",
    "Column",
    "Dial",
    "FreeText",
    "Json",
    "Moment",
    "Option",
    "Order",
    "SentPicture",
    "Several",
    "Table",
    "ask_of_json",
    "no_answer",
]

FORMS: Mapping[str, type[Ask]] = {
    each.form: each
    for each in (Choice, Several, Table, Order, Dial, Moment, Amount, FreeText, SentPicture)
}


def ask_of_json(stored: Json) -> Ask:
    return FORMS[stored["form"]].of_json(stored)
