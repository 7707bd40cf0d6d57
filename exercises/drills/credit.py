"""Why an answer counts as much as it does, in words."""


def counted(rights: int, count: int, what: str = "answers") -> str:
    """For parts that count alike; empty where there is one."""
    return f"{rights} of {count} {what} right; each counts as much as another." if count > 1 else ""
