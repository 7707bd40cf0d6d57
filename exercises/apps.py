from django.apps import AppConfig
from django.db.models.signals import post_delete, post_migrate


class ExercisesConfig(AppConfig):
    name = "exercises"
    verbose_name = "Exercises"

    def ready(self) -> None:
        from exercises.bench import checks  # noqa: F401  registers itself
        from exercises.models import Upload
        from exercises.practice.uploads import forget
        from exercises.standing.upgrading import upgrade

        post_delete.connect(forget, sender=Upload, dispatch_uid="uploads.forget")
        post_migrate.connect(upgrade, sender=self, dispatch_uid="upgrading.upgrade")
