from django.db import migrations


def forget(apps, schema_editor):
    """A report sent back used to be asked for anew where nobody could answer: its practical asks."""
    asked = apps.get_model("exercises", "Asked").objects.using(schema_editor.connection.alias)
    asked.filter(
        drill="bench-practical", assignment=None, again__isnull=False, attempt=None
    ).delete()


class Migration(migrations.Migration):
    dependencies = [("exercises", "0008_pictures_sent")]

    operations = [migrations.RunPython(forget, migrations.RunPython.noop)]
