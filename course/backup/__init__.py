"""All that the site keeps, in one file, and back again.

making.py  restoring.py  moving.py    the verbs: back up, restore, move to another database
archive.py  manifest.py               the file: a tar, and what it says of itself
sqlite.py  postgresql.py              a database as a file, proved, and put back
copying.py                            rows from one database into another, and compared there
emptiness.py  kept.py                 may a site be filled; the key and the pictures
"""
