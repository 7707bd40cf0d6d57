import doctest
import importlib
import pkgutil
from types import ModuleType

import pytest

import exercises.tape


def test_all_has_every_name_once() -> None:
    public = [
        name
        for name, value in vars(exercises.tape).items()
        if not name.startswith("_") and not isinstance(value, ModuleType)
    ]

    assert sorted(exercises.tape.__all__) == sorted(public)


MODULES = [module.name for module in pkgutil.iter_modules(exercises.tape.__path__)]


@pytest.mark.parametrize("name", ["exercises.tape", *(f"exercises.tape.{m}" for m in MODULES)])
def test_examples_in_docstrings_are_true(name: str) -> None:
    assert doctest.testmod(importlib.import_module(name)).failed == 0
