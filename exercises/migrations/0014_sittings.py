import django.db.models.deletion
from django.conf import settings
from django.db import migrations, models


class Migration(migrations.Migration):
    """What was a practice session is a sitting; not a row is changed."""

    dependencies = [
        ("exercises", "0013_summaries_know_their_rules"),
        migrations.swappable_dependency(settings.AUTH_USER_MODEL),
    ]

    operations = [
        migrations.RemoveConstraint("PracticeSession", "one_open_practice_session"),
        migrations.RenameModel("PracticeSession", "Sitting"),
        migrations.RenameField("asked", "session", "sitting"),
        migrations.AlterField(
            "assignment",
            "what",
            models.CharField(
                choices=[
                    ("drills", "A sitting of drills"),
                    ("lesson", "A lesson"),
                    ("practical", "A bench practical"),
                ],
                max_length=20,
            ),
        ),
        migrations.AlterField(
            "sitting",
            "assignment",
            models.ForeignKey(
                blank=True,
                null=True,
                on_delete=django.db.models.deletion.SET_NULL,
                related_name="sittings",
                to="exercises.assignment",
            ),
        ),
        migrations.AlterField(
            "sitting",
            "person",
            models.ForeignKey(
                on_delete=django.db.models.deletion.CASCADE,
                related_name="sittings",
                to=settings.AUTH_USER_MODEL,
            ),
        ),
        migrations.AlterField(
            "sitting",
            "right_needed",
            models.PositiveSmallIntegerField(
                help_text="as the assignment asked when the sitting was begun", null=True
            ),
        ),
        migrations.AddConstraint(
            "sitting",
            models.UniqueConstraint(
                condition=models.Q(ended_at=None), fields=["person"], name="one_open_sitting"
            ),
        ),
    ]
