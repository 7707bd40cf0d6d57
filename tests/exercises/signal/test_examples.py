"""The examples in docstrings, and that everything here can be imported."""

import doctest
import importlib
import pkgutil

import exercises.signal


def test_examples_in_docstrings_are_true() -> None:
    found = pkgutil.walk_packages(exercises.signal.__path__, "exercises.signal.")
    tried = {each.name: doctest.testmod(importlib.import_module(each.name)) for each in found}

    assert sum(each.attempted for each in tried.values()) > 0
    assert [name for name, each in tried.items() if each.failed] == []
