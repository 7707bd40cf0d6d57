"""What is asked for in words, and what the person who reads it looks for."""

from dataclasses import dataclass

from exercises.drills.judging.rules import (
    AT_ONCE,
    CUT,
    ENDS,
    GENERATIONS_ADD,
    LEAVE_IN_ORDER,
    MOVES,
    NO_PULSES,
    ONE_RECORDER,
    RUN_UP,
    SET_UP_FIRST,
    SPEECH_BY_HAND,
    Rule,
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Prompt:
    """`task` is in words with names to be drawn; `rubric` is shown to whoever writes."""

    name: str
    task: str
    rubric: tuple[str, ...]
    rule: Rule


PROMPTS = (
    Prompt(
        name="explain a wiped shot",
        task="{other} assembled {shot} over an old shot at {code}, and the start of the next one "
        "is gone. Explain to {other} what happened, and how to get such a change right.",
        rubric=(
            "says what an assemble does past its end",
            "names the mode that would have done it, and what that needs",
            "is kind to the person",
        ),
        rule=ENDS,
    ),
    Prompt(
        name="explain what pulses are for",
        task="{other} has inserted {shot} on a new tape at {code}; the screen shows nothing. "
        "Explain why, and what to do first next time.",
        rubric=("says what an insert records", "says what lays pulses", "gives an order of steps"),
        rule=NO_PULSES,
    ),
    Prompt(
        name="brief the camera",
        task="{other} takes the camera to the bridge for {shot}. Write down what the editing bench "
        "needs of each take, and why.",
        rubric=("asks for run-up before the action", "gives a length", "gives the reason"),
        rule=RUN_UP,
    ),
    Prompt(
        name="propose instead of a dissolve",
        task="The film wants {talk} to melt into {shot} at {code}. Say why this bench can’t do it, "
        "and propose two other ways of going from one to the other.",
        rubric=("says what two machines can make", "two ways that are cuts", "what each would say"),
        rule=CUT,
    ),
    Prompt(
        name="make room for a shot",
        task="{shot} was forgotten; it belongs at {code}, in the middle of the film. Describe what "
        "can be done and what each way costs.",
        rubric=("nothing on the tape moves", "at least two ways", "time and generations"),
        rule=MOVES,
    ),
    Prompt(
        name="hand over the bench",
        task="Your session ends at {code}, after {shot}; {other} goes on tomorrow. Write the note "
        "that you leave.",
        rubric=("where the film ends, in time code", "which recorder", "what is still to be done"),
        rule=LEAVE_IN_ORDER,
    ),
    Prompt(
        name="set the level of a voice",
        task="{talk} speaks softly, with long pauses; at {code} comes a laugh. Describe how you "
        "find the level and what you leave switched off, with reasons.",
        rubric=("sets it on the loudest words", "says what automatic gain does in a pause"),
        rule=SPEECH_BY_HAND,
    ),
    Prompt(
        name="defend a second look",
        task="{other} wants to set up the player once for the whole day, and begins with {shot} at "
        "{code}. Argue for looking again.",
        rubric=("what drifts or differs", "what becomes of a copy made so", "how long it takes"),
        rule=SET_UP_FIRST,
    ),
    Prompt(
        name="mend now or later",
        task="The joint before {shot}, at {code}, rolls. {other} would rather mend all bad joints "
        "on the last day. Answer.",
        rubric=(
            "what is laid after it depends on it",
            "what mending costs then",
            "what it costs now",
        ),
        rule=AT_ONCE,
    ),
    Prompt(
        name="one recorder",
        task="Only the other bench is free, and {shot} is to be laid at {code}. Explain to {other} "
        "why you wait.",
        rubric=("recorders differ", "where it would show", "what could be done meanwhile"),
        rule=ONE_RECORDER,
    ),
    Prompt(
        name="choose what to copy from",
        task="For a trailer you need {shot}, which stands at {code} on the edit master and also on "
        "its source tape. Which do you copy from, and what difference does it make?",
        rubric=("counts generations", "says what a copy loses", "says what the choice costs"),
        rule=GENERATIONS_ADD,
    ),
)
