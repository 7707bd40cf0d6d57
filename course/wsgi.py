"""The entry point for the web server: `gunicorn course.wsgi`."""

import gc
import os

from django.core.wsgi import get_wsgi_application

from course.charset import readable
from course.checks import refuse_to_serve
from course.memory import hold
from course.refusing import in_a_sentence

NOT_LOADED = 4  # gunicorn stops at this, where it would start such a worker again and again

hold()
os.environ.setdefault("DJANGO_SETTINGS_MODULE", "course.settings")

with in_a_sentence(NOT_LOADED):
    application = readable(get_wsgi_application())
    refuse_to_serve()

# What is loaded now stays: the collector need not walk it again and again under requests.
gc.collect()
gc.freeze()
