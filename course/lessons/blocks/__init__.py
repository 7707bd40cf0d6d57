"""Blocks of a lesson that are written as TOML, one module a block."""
