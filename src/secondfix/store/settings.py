"""Django's settings, from the environment that `secondfix.store.start` laid.

Without a data folder (a type checker, a look at the migrations) there is a secret of this process alone and a
database in memory: nothing is written.
"""

import os
import secrets
from pathlib import Path
from typing import Any

import font_source_sans_pro
from csp.constants import NONE, SELF

from secondfix.store.databases import postgresql_at, sqlite_at, take_sqlite
from secondfix.store.secrets_kept import secret_of

SQLITE_VERSION = take_sqlite()
DATA = os.environ.get("SECONDFIX_DATA") or None
HTTPS = os.environ.get("SECONDFIX_HTTPS") in {"1", "own"}
OWN_TLS = os.environ.get("SECONDFIX_HTTPS") == "own"  # served by this process, under its own authority

SECRET_KEY = secret_of(Path(DATA) / "session.secret").hex() if DATA else secrets.token_hex(32)
DEBUG = False
ALLOWED_HOSTS = [
    "localhost", "127.0.0.1", "[::1]", *filter(None, os.environ.get("SECONDFIX_HOSTS", "").split(",")),
]  # fmt: skip
USE_TZ = True
TIME_ZONE = "UTC"
LANGUAGE_CODE = "en"
USE_I18N = False
DEFAULT_AUTO_FIELD = "django.db.models.BigAutoField"

INSTALLED_APPS = [
    "django.contrib.auth",
    "django.contrib.contenttypes",
    "django.contrib.messages",
    "django.contrib.sessions",
    "django.contrib.staticfiles",
    "django_htmx",
    "axes",
    "csp",
    "secondfix.store",
    "secondfix.web",
]
MIDDLEWARE = [
    "django.middleware.security.SecurityMiddleware",
    "whitenoise.middleware.WhiteNoiseMiddleware",
    "secondfix.web.api.form.Form",
    "secondfix.web.limits.Limits",
    "csp.middleware.CSPMiddleware",
    "django.contrib.sessions.middleware.SessionMiddleware",
    "django.middleware.common.CommonMiddleware",
    "django.middleware.csrf.CsrfViewMiddleware",
    "django.contrib.auth.middleware.AuthenticationMiddleware",
    "django.contrib.messages.middleware.MessageMiddleware",
    "django.middleware.clickjacking.XFrameOptionsMiddleware",
    "django_htmx.middleware.HtmxMiddleware",
    "axes.middleware.AxesMiddleware",
    "secondfix.web.access.Guard",
    "secondfix.web.frame.turns.InTurn",
]
ROOT_URLCONF = "secondfix.web.urls"
TEMPLATES: list[dict[str, Any]] = [
    {
        "BACKEND": "django.template.backends.django.DjangoTemplates",
        "APP_DIRS": True,
        "OPTIONS": {
            "context_processors": [
                "django.template.context_processors.request",
                "django.contrib.auth.context_processors.auth",
                "django.contrib.messages.context_processors.messages",
            ]
        },
    }
]

_URL = os.environ.get("DATABASE_URL")
_FILE = Path(DATA) / "desk.sqlite3" if DATA else ":memory:"
DATABASES = {"default": postgresql_at(_URL) if _URL else sqlite_at(_FILE, SQLITE_VERSION)}

# Who may come in: names and passwords, five wrong ones rest for a quarter of an hour.
AUTH_USER_MODEL = "store.Account"
AUTHENTICATION_BACKENDS = [
    "axes.backends.AxesStandaloneBackend",
    "django.contrib.auth.backends.ModelBackend",
]
AUTH_PASSWORD_VALIDATORS = [
    {"NAME": "django.contrib.auth.password_validation.UserAttributeSimilarityValidator"},
    {
        "NAME": "django.contrib.auth.password_validation.MinimumLengthValidator",
        "OPTIONS": {"min_length": 12},
    },
    {"NAME": "django.contrib.auth.password_validation.CommonPasswordValidator"},
]
LOGIN_URL = "/sign-in"
LOGIN_REDIRECT_URL = "/"
AXES_FAILURE_LIMIT = 5
AXES_COOLOFF_TIME = 0.25  # hours
AXES_RESET_ON_SUCCESS = True
AXES_LOCKOUT_PARAMETERS = [["username", "ip_address"]]
AXES_VERBOSE = False

# What a browser may do with a page: our own files alone, nothing written into the page, no frame.
CONTENT_SECURITY_POLICY = {
    "DIRECTIVES": {
        "default-src": [NONE],
        "script-src": [SELF],
        "style-src": [SELF],
        "img-src": [SELF],
        "font-src": [SELF],
        "connect-src": [SELF],
        "manifest-src": [SELF],
        "worker-src": [SELF],
        "form-action": [SELF],
        "base-uri": [NONE],
        "frame-ancestors": [NONE],
        "object-src": [NONE],
    }
}
SESSION_COOKIE_HTTPONLY = True
SESSION_COOKIE_SAMESITE = "Lax"
SESSION_COOKIE_SECURE = HTTPS
SESSION_COOKIE_AGE = 14 * 24 * 3600
CSRF_COOKIE_SAMESITE = "Lax"
CSRF_COOKIE_SECURE = HTTPS
CSRF_TRUSTED_ORIGINS = [f"https://{host}" for host in ALLOWED_HOSTS if HTTPS]
SECURE_PROXY_SSL_HEADER = ("HTTP_X_FORWARDED_PROTO", "https") if HTTPS and not OWN_TLS else None
SECURE_HSTS_SECONDS = 365 * 24 * 3600 if HTTPS and not OWN_TLS else 0  # a name of a LAN may serve others too
SECURE_CONTENT_TYPE_NOSNIFF = True
SECURE_REFERRER_POLICY = "same-origin"
X_FRAME_OPTIONS = "DENY"
DATA_UPLOAD_MAX_NUMBER_FIELDS = 30_000  # a scene with every rule and exception it may have
DATA_UPLOAD_MAX_MEMORY_SIZE = 24 * 1024 * 1024  # a house of the largest size, and a little
DATA_UPLOAD_MAX_NUMBER_FILES = 10

# These two print whole pages and rows at their finest level: codes and documents, whoever asks for it.
LOGGING = {
    "version": 1,
    "disable_existing_loggers": False,
    "loggers": {"django.template": {"level": "INFO"}, "django.db.backends": {"level": "INFO"}},
}

MESSAGE_STORAGE = "django.contrib.messages.storage.session.SessionStorage"

STATIC_URL = "/static/"
STATICFILES_DIRS = [("source-sans", font_source_sans_pro.font_directory)]
WHITENOISE_USE_FINDERS = True
STORAGES = {
    "default": {"BACKEND": "django.core.files.storage.InMemoryStorage"},
    "staticfiles": {"BACKEND": "django.contrib.staticfiles.storage.StaticFilesStorage"},
}
