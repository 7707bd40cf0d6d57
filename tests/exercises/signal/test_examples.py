"""The examples in docstrings, and that everything here can be imported."""

import doctest
import importlib
import pkgutil

import pytest

import exercises.signal

MODULES = sorted(
    module.name for module in pkgutil.walk_packages(exercises.signal.__path__, "exercises.signal.")
)


@pytest.mark.parametrize("name", MODULES)
def test_examples_in_docstrings_are_true(name: str) -> None:
    assert doctest.testmod(importlib.import_module(name)).failed == 0
