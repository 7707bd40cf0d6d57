"""What has had its day goes, by itself: `manage.py housekeeping` does a round of this a day."""
