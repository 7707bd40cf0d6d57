"""Files on their way in: what is too large never fills the memory or the disk."""

from django.core.files.uploadhandler import FileUploadHandler

from exercises.signal.photographs import LARGEST_FILE


class Bounded(FileUploadHandler):
    """Lets no more of a file through to the handlers after it than shows that it is too large.

    The form then refuses it by its size, in a sentence; what is left of it is read and dropped.
    """

    def new_file(self, *args: object, **named: object) -> None:
        super().new_file(*args, **named)  # type: ignore[arg-type]
        self.passed = 0

    def receive_data_chunk(self, raw_data: bytes, start: int) -> bytes | None:
        if self.passed > LARGEST_FILE:
            return None
        self.passed += len(raw_data)
        return raw_data

    def file_complete(self, file_size: int) -> None:
        """The handlers after it make the file."""
