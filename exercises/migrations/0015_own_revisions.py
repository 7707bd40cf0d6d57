import django.db.models.deletion
from django.db import migrations, models
from django.db.models import OuterRef, Subquery


def tie_to_their_revisions(apps, schema_editor):
    """What was asked of an own drill, `own-12` in its third revision, gets that revision's key."""
    alias = schema_editor.connection.alias
    revisions = apps.get_model("exercises", "OwnRevision").objects.using(alias)
    for drill in apps.get_model("exercises", "OwnDrill").objects.using(alias):
        made = revisions.filter(drill=drill, number=OuterRef("revision")).values("pk")
        for name in ("Asked", "Attempt"):
            asked = apps.get_model("exercises", name)._base_manager.using(alias)
            asked.filter(drill=f"own-{drill.pk}").update(own=Subquery(made))


REVISION = models.ForeignKey(
    blank=True,
    null=True,
    on_delete=django.db.models.deletion.RESTRICT,
    related_name="+",
    to="exercises.ownrevision",
)


class Migration(migrations.Migration):
    dependencies = [("exercises", "0014_sittings")]

    operations = [
        migrations.AddField("asked", "own", REVISION.clone()),
        migrations.AddField("attempt", "own", REVISION.clone()),
        migrations.RunPython(tie_to_their_revisions, migrations.RunPython.noop),
    ]
