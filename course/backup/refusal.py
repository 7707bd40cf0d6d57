class BackupRefused(Exception):
    """Why nothing was written, restored or moved: a sentence for whoever looks after the site."""
