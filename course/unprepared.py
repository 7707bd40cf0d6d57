"""Is the site's database of the version that the site is?"""

from django.db import connection
from django.db.migrations.executor import MigrationExecutor


def is_unprepared() -> bool:
    """Has manage.py migrate something to do?"""
    executor = MigrationExecutor(connection)
    return bool(executor.migration_plan(executor.loader.graph.leaf_nodes()))
