"""Terms of the glossary in a lesson: linked where they are first used, and only there."""

from pathlib import Path

import pytest

from course.lessons.glossary import Glossary
from course.lessons.lesson import LessonTable, Prose, Use
from course.lessons.markdown import Reader
from course.lessons.problems import LessonProblem

GLOSSARY = """\
[[terms]]
term = "edit"
not_before = ["in"]
not_after = ["paper"]
means = "A copy."

[[terms]]
term = "edit in"
forms = ["edits in"]
not_before = ["the middle"]
means = "The first frame."

[[terms]]
term = "take"
forms = ["a [take]", "[takes] of"]
means = "One recording."

[[terms]]
term = "drill"
automatic = false
means = "Questions."
"""


@pytest.fixture(scope="module")
def glossary(tmp_path_factory: pytest.TempPathFactory) -> Glossary:
    folder = tmp_path_factory.mktemp("content")
    (folder / "glossary.toml").write_text(GLOSSARY, encoding="utf-8")
    return Glossary.read(folder)


def link(slug: str, words: str) -> str:
    return f'<a href="/glossary/#{slug}" class="term">{words}</a>'


def html(glossary: Glossary, text: str) -> str:
    (part,) = Reader(glossary).parts(text, 1)
    assert isinstance(part, Prose)
    return part.html.strip()


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("One edit, then an edit.", f"<p>One {link('edit', 'edit')}, then an edit.</p>"),
        ("Edit it. *An edit*", f"<p>{link('edit', 'Edit')} it. <em>An edit</em></p>"),
        ("A paper edit, an edit.", f"<p>A paper edit, an {link('edit', 'edit')}.</p>"),
        ("Credit, edit-like, edited.", "<p>Credit, edit-like, edited.</p>"),
        ("The edit in.", f"<p>The {link('edit-in', 'edit in')}.</p>"),
        ("Two edits in all.", f"<p>Two {link('edit-in', 'edits in')} all.</p>"),
        ("The edit in the middle.", "<p>The edit in the middle.</p>"),
        ("It takes a take.", f"<p>It takes a {link('take', 'take')}.</p>"),
        ("Two takes of it.", f"<p>Two {link('take', 'takes')} of it.</p>"),
        ("A drill.", "<p>A drill.</p>"),
        (
            "On {bench:edit}, an edit.",
            f"<p>On {{bench:edit}}, an {link('edit', 'edit')}.</p>",
        ),
        ("`edit`, edit", f"<p><code>edit</code>, {link('edit', 'edit')}</p>"),
        (
            "[an edit](lesson:x), edit",
            f'<p><a href="/lessons/x/">an edit</a>, {link("edit", "edit")}</p>',
        ),
        ("## An edit\n\nEdit.", f'<h2 id="an-edit">An edit</h2>\n<p>{link("edit", "Edit")}.</p>'),
        ("A **drill**.", f"<p>A <strong>{link('drill', 'drill')}</strong>.</p>"),
        ("So **takes**.", f"<p>So <strong>{link('take', 'takes')}</strong>.</p>"),
        ("An edit, **edit**.", f"<p>An {link('edit', 'edit')}, <strong>edit</strong>.</p>"),
        ("**It can only cut.** So.", "<p><strong>It can only cut.</strong> So.</p>"),
        ("[shots](term:take), a take", f"<p>{link('take', 'shots')}, a take</p>"),
    ],
)
def test_term_is_linked_at_its_first_use(glossary: Glossary, text: str, shown: str) -> None:
    assert html(glossary, text) == shown


def test_term_in_a_table_is_linked_below_its_head(glossary: Glossary) -> None:
    (part,) = Reader(glossary).parts("| edit |\n| --- |\n| an edit |", 1)

    assert isinstance(part, LessonTable)
    assert "<th>edit</th>" in part.html
    assert f"<td>an {link('edit', 'edit')}</td>" in part.html


def test_link_leaves_the_words_that_are_read_aloud(glossary: Glossary) -> None:
    (part,) = Reader(glossary).parts("An edit in **a** drill.".replace("**a**", "a"), 1)

    assert part.texts() == ["An edit in a drill."]


def test_use_is_where_the_term_first_stands_in_bold(glossary: Glossary) -> None:
    reader = Reader(glossary)
    reader.parts("## One\n\nAn edit. A take.\n\n## Two\n\nThis **edit**.", 1)

    assert list(reader.terms.uses.values()) == [
        Use(term="edit", section="two", marked=True),
        Use(term="take", section="one", marked=False),
    ]


@pytest.mark.parametrize(
    ("text", "problem"),
    [
        ("So **wobble**.", "“wobble” is in bold, and the glossary has no such term."),
        ("[so](term:wobble)", "There is no term “wobble” in the glossary."),
    ],
)
def test_term_without_an_entry_is_told_with_its_line(
    glossary: Glossary, text: str, problem: str
) -> None:
    with pytest.raises(LessonProblem) as told:
        Reader(glossary).parts(f"One.\n\n{text}", 7)

    assert (told.value.line, told.value.problem) == (9, problem)


@pytest.mark.parametrize(
    ("old", "new", "line", "problem"),
    [
        ('means = "A copy."', "", 1, "A term has term and means."),
        ('means = "A copy."', 'mean = "A copy."', 1, "A term has term and means."),
        (
            "automatic = false",
            'automatic = "no"',
            18,
            "automatic is not known here, or is of the wrong kind.",
        ),
        (
            "automatic = false",
            "colour = true",
            18,
            "colour is not known here, or is of the wrong kind.",
        ),
        ("automatic = false", 'taught = "x"', 18, "taught is written lesson#section."),
        ('term = "drill"', 'term = "Edits in"', 18, "“edits in” is a name of “edit in” already."),
        ("automatic = false", "automatic =", 20, "This is not TOML: Invalid value."),
    ],
)
def test_mistake_in_the_glossary_is_told_with_its_line(
    tmp_path: Path, old: str, new: str, line: int, problem: str
) -> None:
    (tmp_path / "glossary.toml").write_text(GLOSSARY.replace(old, new, 1), encoding="utf-8")

    with pytest.raises(LessonProblem) as told:
        Glossary.read(tmp_path)

    assert (told.value.line, told.value.problem) == (line, problem)
