"""Where a request comes from, as far as it can be trusted."""

from ipaddress import IPv4Address, IPv6Address, IPv6Network, ip_address

from django.conf import settings
from django.http import HttpRequest

UNKNOWN = "unknown"


def address_of(request: HttpRequest) -> str:
    """The sender's IPv4 address, or the /64 network of their IPv6 address.

    Each proxy adds the address it was called from at the right of X-Forwarded-For; anything
    further left than the site's own proxies may be made up by the sender. With `PROXIES`
    0 the header is not looked at.
    """
    remote = read_address(request.META.get("REMOTE_ADDR", ""))
    if settings.PROXIES < 1:
        return remote
    forwarded = request.META.get("HTTP_X_FORWARDED_FOR", "").split(",")
    nearest_first = forwarded[::-1][: settings.PROXIES]
    address = read_address(nearest_first[-1])
    return remote if address == UNKNOWN else address


def read_address(text: str) -> str:
    """The address in the text, with or without a port; `UNKNOWN` if there is none."""
    text = text.strip()
    if text.startswith("["):
        text = text[1:].partition("]")[0]
    elif text.count(":") == 1:
        text = text.partition(":")[0]
    try:
        return network_of(ip_address(text))
    except ValueError:
        return UNKNOWN


def network_of(address: IPv4Address | IPv6Address) -> str:
    if isinstance(address, IPv4Address):
        return str(address)
    if address.ipv4_mapped:
        return str(address.ipv4_mapped)
    # One household or workshop usually has a whole /64 to choose addresses from.
    return str(IPv6Network((int(address), 64), strict=False))
