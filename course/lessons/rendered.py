"""Tokens of Markdown as groups, as HTML, and as what is read aloud."""

from collections.abc import Iterator, Sequence

from markdown_it import MarkdownIt
from markdown_it.token import Token

MARKDOWN = MarkdownIt("commonmark", {"html": False}).enable("table")


def grouped(text: str) -> Iterator[list[Token]]:
    """Tokens in groups, one for each block at the outermost level."""
    group: list[Token] = []
    for token in MARKDOWN.parse(text):
        group.append(token)
        if token.level == 0 and token.nesting <= 0:
            yield group
            group = []


def html(tokens: Sequence[Token]) -> str:
    rendered: str = MARKDOWN.renderer.render(tokens, MARKDOWN.options, {})
    return rendered


def plain(tokens: Sequence[Token]) -> str:
    """What is read aloud, a paragraph, heading, cell or list item a line."""
    return "\n".join(
        "".join(" " if child.type == "softbreak" else child.content for child in token.children)
        for token in tokens
        if token.children
    )
