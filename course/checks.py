"""What an operator can get wrong, reported by `manage.py check` before the site is served.

Ids: `course.E…` stop the site from working or from being safe; `course.W…` are told by
`check --deploy` alone, since they are about a server and not about trying the site out.
"""

import os
from importlib.util import find_spec
from pathlib import Path
from typing import Any

from django.conf import settings
from django.contrib.staticfiles.storage import ManifestFilesMixin, staticfiles_storage
from django.core.checks import CheckMessage, Error, Tags, Warning, register
from django.core.exceptions import ImproperlyConfigured

from course.data_dir import is_open
from course.environment import Misconfigured

SHORTEST_KEY = 50
CONFIGURATION = "See README.md, “Configuration”."
ON_A_SERVER = "See README.md, “On a server”."
OF_AN_OPERATOR = (Tags.security, Tags.files, Tags.caches)
"""The checks before an operator’s command. Whether lessons are in order is their authors’ matter:
that takes longer than most commands do, and `manage.py check` and `migrate` tell it."""


@register(Tags.security)
def check_secret_key(**kwargs: Any) -> list[CheckMessage]:
    try:
        length = len(settings.SECRET_KEY)
    except ImproperlyConfigured:  # Django's own answer to an empty one
        length = 0
    if settings.DEBUG or length >= SHORTEST_KEY:
        return []
    problem = f"SECRET_KEY has {length} characters; sessions and links need {SHORTEST_KEY}."
    return [Error(problem, hint=f"Set SECRET_KEY. {CONFIGURATION}", id="course.E001")]


@register(Tags.files)
def check_data_dir(**kwargs: Any) -> list[CheckMessage]:
    folder = Path(settings.DATA_DIR)
    if folder.is_dir() and os.access(folder, os.W_OK | os.X_OK):
        return []
    problem = f"The folder {folder} is missing or can’t be written to."
    hint = f"Make it, or set DATA_DIR to a folder that the site may write to. {CONFIGURATION}"
    return [Error(problem, hint=hint, id="course.E002")]


@register(Tags.caches)
def check_cache(**kwargs: Any) -> list[CheckMessage]:
    backend = settings.CACHES["default"]["BACKEND"]
    if "redis" not in backend.lower() or find_spec("redis"):
        return []
    problem = "CACHE_URL names a Redis server, but the redis package is not installed."
    hint = f"Install the site with its cache extra, or leave CACHE_URL out. {ON_A_SERVER}"
    return [Error(problem, hint=hint, id="course.E004")]


@register(Tags.caches)
def check_made_limit(**kwargs: Any) -> list[CheckMessage]:
    if settings.MADE_LIMIT_MB > 0:
        return []
    problem = f"MADE_LIMIT_MB is {settings.MADE_LIMIT_MB}: every picture would be made each time."
    return [Error(problem, hint=f"Allow 100 at least. {CONFIGURATION}", id="course.E006")]


@register(Tags.security, deploy=True)
def check_https_behind_proxies(**kwargs: Any) -> list[CheckMessage]:
    if not settings.HTTPS or settings.PROXIES:
        return []
    problem = "HTTPS is on and PROXIES is 0: behind a proxy, every page would redirect to itself."
    hint = f"Set PROXIES to the number of proxies in front of the site. {ON_A_SERVER}"
    return [Warning(problem, hint=hint, id="course.W001")]


@register(Tags.security, deploy=True)
def check_hosts(**kwargs: Any) -> list[CheckMessage]:
    if "*" not in settings.ALLOWED_HOSTS:
        return []
    problem = (
        "ALLOWED_HOSTS takes any name, so a link for a new password can be made to leave the site."
    )
    hint = f"Name the hosts that the site answers to. {CONFIGURATION}"
    return [Warning(problem, hint=hint, id="course.W002")]


@register(Tags.staticfiles, deploy=True)
def check_static_files(**kwargs: Any) -> list[CheckMessage]:
    storage = staticfiles_storage
    if not isinstance(storage, ManifestFilesMixin) or storage.read_manifest():
        return []
    problem = "The static files have not been collected: every page would fail."
    hint = f"Run manage.py collectstatic. {ON_A_SERVER}"
    return [Warning(problem, hint=hint, id="course.W003")]


@register(Tags.security, deploy=True)
def check_closed(**kwargs: Any) -> list[CheckMessage]:
    folder = Path(settings.DATA_DIR)
    if not folder.is_dir() or not is_open(folder):
        return []
    problem = f"Others can look into the folder {folder}."
    hint = f"Set DATA_DIR to a folder of the site’s own, of the mode 0700. {CONFIGURATION}"
    return [Warning(problem, hint=hint, id="course.W004")]


def refuse_to_serve() -> None:
    """Raise `Misconfigured` with the first thing that keeps the site from working or being safe."""
    for check in (check_secret_key, check_data_dir, check_cache):
        for message in check():
            raise Misconfigured(f"{message.msg} {message.hint}")
