"""Somebody without a mouse: reaches things by Tab, and has to see on the way where the focus is."""

from playwright.sync_api import Locator, Page, expect

MOST = 80  # presses of Tab to anything on a page

# How everything looks that can have the focus, while it has not.
REMEMBER = """() => {
  const look = (each) => {
    const style = getComputedStyle(each);
    const outline = style.outlineStyle === "none" ? "" : style.outline;
    return `${outline} ${style.boxShadow}`;
  };
  window.look = look;
  window.looks = new WeakMap();
  for (const each of document.querySelectorAll("a,button,input,select,textarea,summary,[tabindex]"))
    if (each !== document.activeElement) window.looks.set(each, look(each));
}"""

HERE = """(wanted) => {
  const here = document.activeElement;
  const box = here.getBoundingClientRect();
  const seen = box.width > 1 && box.height > 1
    && box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth;
  const changed = window.looks.get(here) !== window.look(here);
  const shown = here === document.body || (seen && changed);
  return [wanted.includes(here), shown ? "" : here.outerHTML.slice(0, 200)];
}"""


class Keys:
    """The keys of one page."""

    def __init__(self, page: Page) -> None:
        self.page = page

    def to(self, name: str, role: str = "", *, most: int = MOST) -> Locator:
        """Tab to what has this role and accessible name; without a role, to the field so called."""
        found = self.named(name, role)
        assert found.count(), f"{self.page.url} has no {role or 'field'} “{name}”."
        return self.reach(found, name, most=most)

    def reach(self, found: Locator, told: str, *, most: int = MOST) -> Locator:
        """Tab to the first of `found` that comes.

        AssertionError where that takes more presses than `most`, or where something on the way
        has the focus and does not show it.
        """
        wanted = found.element_handles()
        self.page.evaluate(REMEMBER)
        for _ in range(most):
            self.page.keyboard.press("Tab")
            reached, unseen = self.page.evaluate(HERE, wanted)
            assert not unseen, f"{self.page.url}: the focus can’t be seen on {unseen}"
            if reached:
                return found
        raise AssertionError(f"{self.page.url}: “{told}” is more than {most} presses of Tab away.")

    def named(self, name: str, role: str) -> Locator:
        if not role:
            return self.page.get_by_label(name, exact=True)
        if role == "summary":
            return self.page.locator("summary").filter(has_text=name)
        return self.page.get_by_role(role, name=name, exact=True)  # type: ignore[arg-type]

    def follow(self, name: str, *, to: str) -> None:
        """A link; the page that it leads to has this heading."""
        self.press(name, "link", to=to)

    def send(self, name: str, *, to: str) -> None:
        """A button that sends a form; the page that comes of it has this heading."""
        self.press(name, "button", to=to)

    def press(self, name: str, role: str, *, to: str) -> None:
        self.to(name, role)
        self.enter(to)

    def enter(self, to: str) -> None:
        with self.page.expect_navigation():
            self.page.keyboard.press("Enter")
        expect(self.page.get_by_role("heading", name=to, exact=True, level=1)).to_be_visible()

    def type(self, name: str, text: str) -> None:
        """Into a field, in the stead of what it holds."""
        self.to(name)
        self.page.keyboard.press("ControlOrMeta+A")
        self.page.keyboard.type(text)

    def pick(self, name: str, option: str) -> None:
        """One of a list, by typing what it is called."""
        self.to(name)
        self.page.keyboard.type(option)
        expect(self.named(name, "").locator("option:checked")).to_have_text(option)

    def tick(self, name: str, *, on: bool = True) -> None:
        self.to(name)
        self.page.keyboard.press("Space")
        expect(self.named(name, "")).to_be_checked(checked=on)

    def choose(self, name: str, *, first: str) -> None:
        """One of several: Tab to the first, or the one that is chosen, then by the arrow keys."""
        self.to(first)
        self.page.keyboard.press("Space")
        wanted = self.named(name, "")
        for _ in range(9):
            if wanted.is_checked():
                return
            self.page.keyboard.press("ArrowDown")
        raise AssertionError(f"The arrow keys don’t lead to “{name}”.")

    def type_day(self, name: str, day: str) -> None:
        """A day such as 2027-03-03, whose month and day are the same, in whichever order asked."""
        year, month, number = day.split("-")
        assert month == number
        self.to(name)
        self.page.keyboard.type(f"{number}{month}{year}")
