from django.apps import AppConfig
from django.db.models.signals import post_delete, post_migrate


class ExercisesConfig(AppConfig):
    name = "exercises"
    verbose_name = "Exercises"

    def ready(self) -> None:
        from exercises.models import Upload
        from exercises.upgrading import upgrade
        from exercises.uploads import forget

        post_delete.connect(forget, sender=Upload, dispatch_uid="exercises.uploads.forget")
        post_migrate.connect(upgrade, sender=self, dispatch_uid="exercises.upgrading.upgrade")
