"""The entry point for the web server: `gunicorn course.wsgi`."""

import os

from django.core.wsgi import get_wsgi_application

from course.memory import hold

hold()
os.environ.setdefault("DJANGO_SETTINGS_MODULE", "course.settings")

application = get_wsgi_application()
