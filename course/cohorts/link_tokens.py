"""The signed tokens of links for a new password."""

from django.conf import settings
from django.contrib.auth.tokens import PasswordResetTokenGenerator
from django.utils.http import base36_to_int

from course.cohorts.models import Person


class LinkTokens(PasswordResetTokenGenerator):
    """Django's own, but for those that a clock which was ahead has dated into the future.

    They would work until that day. None counts that lies further ahead than a link lasts.
    """

    def check_token(self, user: Person | None, token: str | None) -> bool:
        return super().check_token(user, token) and not self.is_ahead(token or "")

    def is_ahead(self, token: str) -> bool:
        """Of a token that is the site's own."""
        made = base36_to_int(token.partition("-")[0])
        return made > self._num_seconds(self._now()) + settings.PASSWORD_RESET_TIMEOUT


LINK_TOKENS = LinkTokens()
