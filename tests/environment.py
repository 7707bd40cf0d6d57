"""The environment the tests' Django reads; a plugin (`-p tests.environment`) to come before it.

A `DATABASE_URL` that is set stays: what uses the database also runs on PostgreSQL.
"""

import atexit
import os
import shutil
import tempfile
from pathlib import Path

from tests.once import RUN

if RUN not in os.environ:  # the others of the run are told
    os.environ[RUN] = tempfile.mkdtemp(prefix="run-up-tests-")
    atexit.register(shutil.rmtree, os.environ[RUN], ignore_errors=True)

data_dir = Path(tempfile.mkdtemp(prefix="data-", dir=os.environ[RUN]))
# A process that runs a share of the tests may be told to end before pytest has tidied up.
atexit.register(shutil.rmtree, data_dir, ignore_errors=True)
(data_dir / "static").mkdir()

os.environ["DATA_DIR"] = str(data_dir)
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
