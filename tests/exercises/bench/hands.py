"""A browser without scripts at the practice bench."""

from typing import Any

from django.http import HttpResponse
from django.test import Client
from django.urls import reverse

from exercises.bench.forms.controls import MADE
from exercises.drills.setting.phrases import code
from exercises.models import PracticalRun


def post(client: Client, run: PracticalRun, action: str, **fields: Any) -> HttpResponse:
    """One form of the page, as it stands after all that was done."""
    run.refresh_from_db()
    sent = {"action": action, "seen": run.done, **fields}
    return client.post(reverse("bench-do", args=[run.token]), sent)  # type: ignore[return-value]


def by_form(run: PracticalRun, name: str, arguments: dict[str, Any]) -> dict[str, Any]:
    """What somebody types to do an action, by field."""
    bench = run.worktop.set_up.bench
    times = {"to", "at"} if name in ("wind", "mark") else set()
    typed = {
        key: code(value, bench) if key in times else value
        for key, value in arguments.items()
        if value is not None
    }
    if name == "mode":
        mode = {"picture": True, "sound": True} | arguments
        wanted = {key: mode[key] for key in ("mode", "picture", "sound")}
        if mode["mode"] == "assemble":
            wanted = {"mode": "assemble"}
        return {"made": next(key for key, value in MADE.items() if value == wanted)}
    if name == "play":
        return {"machine": arguments["machine"], "seconds": arguments["frames"] // 25}
    if name == "picture-level":
        return {"by": "automatic"}
    if name == "sound-level":
        return typed | {"gain": arguments["gain"] / 10}
    return typed
