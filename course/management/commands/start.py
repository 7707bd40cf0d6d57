"""From nothing to a running site, in one command; see README.md, "Run"."""

import os
import secrets
import subprocess
import sys
from pathlib import Path
from typing import Any

from django.conf import settings
from django.core.management import call_command
from django.core.management.base import BaseCommand

from course.checks import refuse_to_serve
from course.cohorts.models import Person
from course.environment import Environment

WORKERS = 2
THREADS = 8


class Command(BaseCommand):
    help = "Prepare the database and the demo, then serve on 127.0.0.1 (PORT, or 8000)."
    requires_system_checks = ()  # the secret key may be made only now

    def handle(self, *args: Any, **options: Any) -> None:
        port = Environment().number("PORT", default=8000, most=65535)
        keep_secret_key(settings.DATA_DIR)
        refuse_to_serve()
        call_command("migrate", verbosity=0)
        call_command("collectstatic", interactive=False, verbosity=0)
        if not Person.objects.exists():
            self.stdout.write("Building the demo: Quay Street Media Workshop …")
            call_command("demo", stdout=self.stdout)
        self.stdout.write(f"\nRun-up is at http://127.0.0.1:{port}/ (stop it with Ctrl+C)\n")
        call_command("demo", "--sign-ins", stdout=self.stdout)
        self.stdout.flush()
        keep_house()
        serve(port)


def keep_secret_key(folder: Path) -> None:
    """Make the key that signs sessions, once; settings.py reads it from there."""
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    path = settings.KEPT_KEY
    if not path.exists():
        path.touch(mode=0o600)
        path.write_text(secrets.token_urlsafe(50))
        settings.SECRET_KEY = Environment().kept_secret("SECRET_KEY", path)


def keep_house() -> None:
    """Have the daily work done by a process that ends with this one, which becomes the server."""
    command = [sys.executable, "manage.py", "housekeeping", "--site", str(os.getpid())]
    subprocess.Popen(command, cwd=settings.BASE_DIR)  # noqa: S603 - our own program and words


def serve(port: int) -> None:
    """Become the web server. Without a certificate there is only plain HTTP to offer."""
    os.environ.setdefault("HTTPS", "false")
    command = [sys.executable, "-m", "gunicorn", "course.wsgi", "--bind", f"127.0.0.1:{port}"]
    size = ["--workers", str(WORKERS), "--threads", str(THREADS)]
    quiet = ["--no-control-socket", "--log-level", "warning"]
    os.chdir(settings.BASE_DIR)
    os.execv(sys.executable, command + size + quiet)  # noqa: S606 - our own program and words
