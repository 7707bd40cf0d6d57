"""What pages of several rooms have in common."""
