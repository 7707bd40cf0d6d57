"""The environment the tests' Django reads; a plugin (`-p tests.environment`) to come before it.

A `DATABASE_URL` that is set stays: what uses the database also runs on PostgreSQL.
"""

import os
import tempfile
from pathlib import Path

data_dir = tempfile.TemporaryDirectory(prefix="run-up-tests-")
(Path(data_dir.name) / "static").mkdir()

os.environ["DATA_DIR"] = data_dir.name
os.environ["SECRET_KEY"] = "only-for-tests-" * 4
for name, value in {
    "DEBUG": "false",
    "HTTPS": "false",
    "PROXIES": "0",
    "SELF_STUDY": "true",
    "TIME_ZONE": "Europe/London",
    "ALLOWED_HOSTS": "127.0.0.1,localhost,testserver",
}.items():
    os.environ[name] = value


def pytest_unconfigure() -> None:
    data_dir.cleanup()
