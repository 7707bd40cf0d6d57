"""Settings. Every variable of the environment is read here, once.

README.md, "Configuration", says what each is for. A secret may also come from a
file: `SECRET_KEY_FILE=/run/secrets/key` does what `SECRET_KEY=…` does.
"""

from pathlib import Path
from typing import Any
from urllib.parse import quote

from course.environment import Environment
from exercises.tape.work import USUAL

env = Environment()

BASE_DIR = Path(__file__).resolve().parent.parent

# --- What an operator chooses -------------------------------------------------

DEBUG = env.bool("DEBUG", default=False)
DATA_DIR = Path(env.str("DATA_DIR", default=str(BASE_DIR / ".data")))
# `manage.py start` keeps a key of its own beside the database.
KEPT_KEY = DATA_DIR / "secret-key"
SECRET_KEY = env.kept_secret("SECRET_KEY", KEPT_KEY)
ALLOWED_HOSTS = env.names("ALLOWED_HOSTS", default=["127.0.0.1", "localhost"])
# A workshop without internet has no certificate: HTTPS=false lets it run on its own network.
HTTPS = env.bool("HTTPS", default=not DEBUG)
# How many proxies in front of the site add to X-Forwarded-For; 0: trust none of it.
PROXIES = env.number("PROXIES", default=0, most=100)
# May anyone make an account for self-study, or only people who hold a cohort's code?
SELF_STUDY = env.bool("SELF_STUDY", default=True)

# How much of the disk made pictures and sounds may take; where Redis keeps them, it has its own.
MADE_LIMIT_MB = env.number("MADE_LIMIT_MB", default=500, most=10**6)
# How many steps of work `manage.py simulate` may take for an answer: exercises/tape/work.py.
SIMULATE_STEPS = env.number("SIMULATE_STEPS", default=USUAL, least=1, most=10**12)

# Pictures that learners send: to be backed up with the database.
PICTURES_DIR = DATA_DIR / "pictures"

# --- The site -----------------------------------------------------------------

INSTALLED_APPS = [
    "django.contrib.admin",
    "django.contrib.auth",
    "django.contrib.contenttypes",
    "django.contrib.sessions",
    "django.contrib.messages",
    "django.contrib.staticfiles",
    "django.forms",
    "django_htmx",
    "template_partials",
    "course",
    "course.cohorts",
    "course.lessons",
    "exercises",
]

MIDDLEWARE = [
    "django.middleware.security.SecurityMiddleware",
    "whitenoise.middleware.WhiteNoiseMiddleware",
    # Pages are text that repeats itself; Django pads them against BREACH.
    "course.middleware.GZipText",
    "course.middleware.content_security_policy",
    "course.middleware.no_nul",
    "course.charset.in_utf_8",
    "course.unwritable.Sessions",
    "course.middleware.kept_by_nobody",
    "django.middleware.common.CommonMiddleware",
    "django.middleware.csrf.CsrfViewMiddleware",
    "django.contrib.auth.middleware.AuthenticationMiddleware",
    "django.contrib.messages.middleware.MessageMiddleware",
    "django.middleware.clickjacking.XFrameOptionsMiddleware",
    "django_htmx.middleware.HtmxMiddleware",
    "course.middleware.whole_page_answers",
]

ROOT_URLCONF = "course.urls"
WSGI_APPLICATION = "course.wsgi.application"

TEMPLATES = [
    {
        "BACKEND": "django.template.backends.django.DjangoTemplates",
        "DIRS": [BASE_DIR / "templates"],
        "APP_DIRS": True,
        "OPTIONS": {
            "context_processors": [
                "django.template.context_processors.request",
                "django.contrib.auth.context_processors.auth",
                "django.contrib.messages.context_processors.messages",
            ],
            "builtins": ["template_partials.templatetags.partials"],
        },
    },
]

FORM_RENDERER = "course.form_renderer.FormRenderer"

LANGUAGE_CODE = "en-gb"
TIME_ZONE = env.time_zone("TIME_ZONE", default="Europe/London")
USE_I18N = False
USE_TZ = True

# --- Database and cache ---------------------------------------------------------

KEPT_IN = f"sqlite:///{quote(str(DATA_DIR / 'run-up.sqlite3'))}"
DATABASES = {"default": env.database("DATABASE_URL", default=KEPT_IN)}
DEFAULT_AUTO_FIELD = "django.db.models.BigAutoField"

CACHE = env.shared_cache("CACHE_URL", default=f"filecache://{DATA_DIR / 'cache'}")
IN_FILES = CACHE["BACKEND"].endswith("FileBasedCache")
if IN_FILES and not DATA_DIR.is_dir():
    # The cache would make the folder, and nobody would be told that DATA_DIR is wrong.
    IN_FILES, CACHE["BACKEND"] = False, "django.core.cache.backends.dummy.DummyCache"
# Pictures and sounds, kept by content: they never go out of date.
MADE: dict[str, Any] = {**CACHE, "KEY_PREFIX": "made", "TIMEOUT": None}
if IN_FILES:
    MADE |= {
        "BACKEND": "course.kept_files.KeptFiles",
        "LOCATION": f"{CACHE['LOCATION']}-made",
        "OPTIONS": {**CACHE.get("OPTIONS", {}), "LIMIT": MADE_LIMIT_MB * 10**6},
    }
CACHES = {"default": CACHE, "made": MADE}

# --- People -------------------------------------------------------------------

AUTH_USER_MODEL = "cohorts.Person"
LOGIN_URL = "sign-in"
LOGIN_REDIRECT_URL = "today"
LOGOUT_REDIRECT_URL = "today"
PASSWORD_HASHERS = ["django.contrib.auth.hashers.Argon2PasswordHasher"]
AUTH_PASSWORD_VALIDATORS = [
    {
        "NAME": "django.contrib.auth.password_validation.UserAttributeSimilarityValidator",
        "OPTIONS": {"user_attributes": ["name", "sign_in_name", "email"]},
    },
    {
        "NAME": "django.contrib.auth.password_validation.MinimumLengthValidator",
        "OPTIONS": {"min_length": 10},
    },
    {"NAME": "django.contrib.auth.password_validation.CommonPasswordValidator"},
    {"NAME": "course.cohorts.passwords.LongestPasswordValidator"},
]
PASSWORD_RESET_TIMEOUT = 3 * 24 * 3600  # a link handed over on Friday still works on Monday
# Failures that are let through at once, then the seconds until each further one: the longest
# that anybody waits. A whole classroom may share an address. See course/cohorts/limits.py.
PACES = {
    "account and address": (5, 180),
    "account": (30, 60),
    "address": (100, 10),
    "known browser": (10, 120),
    "code": (100, 0.2),
    "code by person": (10, 60),
    "card": (100, 10),
    "new account": (100, 10),
}
# Taken from one person; a script that guesses sends more.
ANSWERS_A_MINUTE = 60

# --- Files that are sent -------------------------------------------------------

FILE_UPLOAD_HANDLERS = [
    "course.incoming.Bounded",
    "django.core.files.uploadhandler.MemoryFileUploadHandler",
    "django.core.files.uploadhandler.TemporaryFileUploadHandler",
]
DATA_UPLOAD_MAX_NUMBER_FILES = 4  # a form asks for one; two at once get a sentence

# --- E-mail: an extra, off unless EMAIL_URL names a server --------------------------

MAIL_SERVER = env.mail_server("EMAIL_URL")
SENDS_MAIL = bool(MAIL_SERVER)
EMAIL_TIMEOUT = 10
DEFAULT_FROM_EMAIL = env.str("EMAIL_FROM", default="run-up@localhost")
vars().update(MAIL_SERVER)

# --- Security: follows DEBUG, by way of HTTPS -------------------------------------

SECURE_CSP = {
    "default-src": ["'self'"],
    "base-uri": ["'self'"],
    "form-action": ["'self'"],
    "frame-ancestors": ["'none'"],
    "object-src": ["'none'"],
}
SECURE_SSL_REDIRECT = HTTPS
SECURE_HSTS_SECONDS = 365 * 24 * 3600 if HTTPS else 0
SECURE_HSTS_INCLUDE_SUBDOMAINS = HTTPS
SECURE_HSTS_PRELOAD = HTTPS
SECURE_REFERRER_POLICY = "same-origin"
SESSION_COOKIE_SECURE = HTTPS
SESSION_COOKIE_HTTPONLY = True
SESSION_COOKIE_AGE = 14 * 24 * 3600
CSRF_COOKIE_SECURE = HTTPS
X_FRAME_OPTIONS = "DENY"
if HTTPS and PROXIES:
    SECURE_PROXY_SSL_HEADER = ("HTTP_X_FORWARDED_PROTO", "https")

# --- Static files ---------------------------------------------------------------

STATIC_URL = "/static/"
STATIC_ROOT = DATA_DIR / "static"
STATICFILES_DIRS = [BASE_DIR / "static"]
STORAGES = {
    "default": {"BACKEND": "django.core.files.storage.FileSystemStorage"},
    "staticfiles": {"BACKEND": "whitenoise.storage.CompressedManifestStaticFilesStorage"},
}

# --- Log ----------------------------------------------------------------------

LOGGING = {
    "version": 1,
    "disable_existing_loggers": False,
    "formatters": {"line": {"format": "{asctime} {levelname} {name}: {message}", "style": "{"}},
    "filters": {
        "brief": {
            "()": "django.utils.log.CallbackFilter",
            "callback": "ext://course.away.without_trace",
        }
    },
    "handlers": {
        "stderr": {"class": "logging.StreamHandler", "formatter": "line", "filters": ["brief"]}
    },
    "root": {"handlers": ["stderr"], "level": "WARNING"},
}
