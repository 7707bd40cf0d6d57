#!/usr/bin/env python
"""Run-up's command line: every Django command, and the project's own."""

import os
import sys


def main() -> None:
    os.environ.setdefault("DJANGO_SETTINGS_MODULE", "course.settings")
    from django.core.management import execute_from_command_line

    from course.refusing import in_a_sentence

    with in_a_sentence():
        execute_from_command_line(sys.argv)


if __name__ == "__main__":
    main()
