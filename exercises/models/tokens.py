"""Names that can't be guessed, for what the browser may know of."""

import secrets


def new_token() -> str:
    return secrets.token_urlsafe(16)
