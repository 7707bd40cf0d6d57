"""The entry point for the web server: `gunicorn course.wsgi`."""

import os

from django.core.wsgi import get_wsgi_application

os.environ.setdefault("DJANGO_SETTINGS_MODULE", "course.settings")

application = get_wsgi_application()
