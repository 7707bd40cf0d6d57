"""The keys that tests press: they fail where somebody without a mouse would be lost."""

import pytest
from playwright.sync_api import Page

from tests.browser.keyboard import Keys

LINKS = "".join(f"<p><a href='#{number}'>Take {number}</a></p>" for number in range(9))


def keys_on(page: Page, body: str, style: str = "") -> Keys:
    page.set_content(f"<style>{style}</style>{body}")
    return Keys(page)


def test_link_is_reached_by_its_name(page: Page) -> None:
    keys_on(page, LINKS).to("Take 8", "link")

    assert page.evaluate("document.activeElement.textContent") == "Take 8"


@pytest.mark.parametrize(
    ("style", "name", "told"),
    [
        ("a { outline: none }", "Take 8", "can’t be seen on <a"),
        ("a:nth-child(1) { position: absolute; left: -999px }", "Take 8", "can’t be seen on <a"),
        ("", "Take 9", "has no link “Take 9”"),
        ("p:last-child { visibility: hidden }", "Take 8", "has no link “Take 8”"),
        ("", "Take 5", "“Take 5” is more than 5 presses of Tab away"),
    ],
)
def test_what_can_not_be_reached_or_seen_fails(
    page: Page, style: str, name: str, told: str
) -> None:
    with pytest.raises(AssertionError, match=told):
        keys_on(page, LINKS, style).to(name, "link", most=5 if name == "Take 5" else 30)


def test_focus_may_show_by_a_shadow(page: Page) -> None:
    keys = keys_on(page, LINKS, "a { outline: none } a:focus { box-shadow: 0 0 0 3px }")
    keys.to("Take 3", "link")

    assert page.evaluate("document.activeElement.textContent") == "Take 3"


def test_trap_is_found(page: Page) -> None:
    body = f"<button onkeydown='event.preventDefault()'>Here for ever</button>{LINKS}"
    with pytest.raises(AssertionError, match="more than 12 presses"):
        keys_on(page, body).to("Take 0", "link", most=12)


def test_one_of_several_is_chosen_by_arrows(page: Page) -> None:
    modes = ("Assemble", "Insert picture", "Insert sound")
    body = "".join(f"<label><input type='radio' name='mode'>{mode}</label>" for mode in modes)
    keys_on(page, body).choose("Insert sound", first="Assemble")

    assert page.evaluate("document.activeElement.parentElement.textContent") == "Insert sound"
