"""A small lesson without a mistake, to be spoilt by tests one mistake at a time."""

from pathlib import Path

from course.lessons.lesson import Lesson
from course.lessons.shelf import Shelf, read_shelf

SLUG = "a-short-lesson"

LESSON = """\
```lesson
title = "A short lesson"
slug = "a-short-lesson"
minutes = 8
outcome = ["say one thing;"]
drills = ["choose-the-mode"]
summary = ["One.", "Two.", "Three.", "Four.", "Five."]
sources = ["common practice"]

[[claims]]
text = "2 seconds are wiped"
check = "bench-figure"
given = { figure = "erase_gap", rate = "25" }
expect = "2 seconds"
```

## The first place {#first}

Here 2 seconds are wiped. See [the other place](lesson:a-short-lesson#second).

```tape-map
name = "map"
title = "A shot behind black"
caption = "Look at the pulses."
rate = "25"
master = { length = 1000, recorded = [{ start = 0, end = 250, what = "black" }] }
sources.A.takes = [{ start = 0, end = 750 }]
edits = [{ mode = "assemble", source = "A", in = 300, out = 450, at = 250 }]
```

````example A worked one {#second}
Inside the box.

```drill
slug = "choose-the-mode"
```
````

| Head | Other |
| --- | --- |
| cell | cell |
"""


def spoilt(old: str, new: str) -> str:
    """The lesson with one passage changed, which it holds exactly once."""
    assert LESSON.count(old) == 1, f"{old!r} is {LESSON.count(old)} times in the sample"
    return LESSON.replace(old, new)


def line_of(passage: str, text: str = LESSON) -> int:
    """The line of a file that a passage begins on."""
    return text[: text.index(passage)].count("\n") + 1


def shelve(folder: Path, *texts: str) -> Shelf:
    """A shelf of lessons made of these texts; the first is called after SLUG."""
    for number, text in enumerate(texts, start=1):
        slug = SLUG if number == 1 else f"{SLUG}-{number}"
        (folder / f"{number:02}-{slug}.md").write_text(text, encoding="utf-8")
    return read_shelf(folder)


def read_sample(folder: Path, text: str = LESSON) -> Lesson:
    shelf = shelve(folder, text)
    assert shelf.problems == ()
    return shelf.lessons[0]
