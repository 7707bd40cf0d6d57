"""Where a request comes from: from the right of X-Forwarded-For, as far as proxies are ours.

The form of the header's entries, with and without ports and brackets, is that of RFC 7239,
section 6; networks and mapped addresses are those of RFC 4291, sections 2.5.4 and 2.5.5.2.
The addresses are those set aside for documentation by RFC 5737 and RFC 3849.
"""

import pytest
from django.test import RequestFactory
from pytest_django import Settings

from course.cohorts.addresses import address_of


def address(remote: str, forwarded: str | None = None) -> str:
    headers = {} if forwarded is None else {"X-Forwarded-For": forwarded}
    return address_of(RequestFactory().get("/", headers=headers, REMOTE_ADDR=remote))


@pytest.mark.parametrize(
    ("remote", "expected"),
    [
        ("192.0.2.7", "192.0.2.7"),
        ("2001:db8:1:2:3:4:5:6", "2001:db8:1:2::/64"),
        ("2001:db8:1:2:ffff::1", "2001:db8:1:2::/64"),
        ("2001:db8:1:3::1", "2001:db8:1:3::/64"),
        ("::ffff:192.0.2.7", "192.0.2.7"),
        ("fe80::1%eth0", "fe80::/64"),
        ("", "unknown"),
        ("a socket", "unknown"),
    ],
)
def test_address_is_that_of_the_caller(remote: str, expected: str) -> None:
    assert address(remote) == expected


def test_address_ignores_the_header_without_proxies() -> None:
    assert address("192.0.2.7", "198.51.100.1") == "192.0.2.7"


@pytest.mark.parametrize(
    ("proxies", "forwarded", "expected"),
    [
        (1, "198.51.100.1", "198.51.100.1"),
        (1, "203.0.113.9, 198.51.100.1", "198.51.100.1"),  # the left one is made up
        (2, "203.0.113.9, 198.51.100.1, 192.0.2.50", "198.51.100.1"),
        (2, "198.51.100.1", "198.51.100.1"),  # came by the inner proxy alone
        (1, "198.51.100.1:4711", "198.51.100.1"),
        (1, "[2001:db8:1:2::5]:4711", "2001:db8:1:2::/64"),
        (1, "2001:db8:1:2::5", "2001:db8:1:2::/64"),
        (1, None, "192.0.2.7"),
        (1, "", "192.0.2.7"),
        (1, ",,,", "192.0.2.7"),
        (1, "unknown", "192.0.2.7"),
        (1, "1.2.3.4.5.6, \x00, 999.1.1.1", "192.0.2.7"),
        (1, "[", "192.0.2.7"),
        (3, "x" * 8000, "192.0.2.7"),
    ],
)
def test_address_is_counted_from_the_right(
    settings: Settings, proxies: int, forwarded: str | None, expected: str
) -> None:
    settings.PROXIES = proxies

    assert address("192.0.2.7", forwarded) == expected
