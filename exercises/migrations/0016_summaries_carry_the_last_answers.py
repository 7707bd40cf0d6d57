from django.db import migrations, models
from django.db.models import Count, OuterRef, Subquery


def count_answers(apps, schema_editor):
    """Sittings know how many of their questions are answered."""
    alias = schema_editor.connection.alias
    asked = apps.get_model("exercises", "Asked").objects.using(alias)
    answered = asked.filter(sitting=OuterRef("pk"), attempt__isnull=False).order_by()
    number = answered.values("sitting").annotate(number=Count("pk")).values("number")
    sittings = apps.get_model("exercises", "Sitting").objects.using(alias)
    sittings.filter(asked__attempt__isnull=False).update(answered=Subquery(number))


class Migration(migrations.Migration):
    dependencies = [("exercises", "0015_own_revisions")]

    operations = [
        migrations.AddField("summary", "recent", models.JSONField(default=dict)),
        migrations.AddField("summary", "rows", models.JSONField(default=dict)),
        migrations.AddField("summary", "given", models.JSONField(default=list)),
        migrations.AddField("summary", "version", models.PositiveIntegerField(default=0)),
        migrations.AddField("sitting", "answered", models.PositiveSmallIntegerField(default=0)),
        migrations.RunPython(count_answers, migrations.RunPython.noop),
    ]
