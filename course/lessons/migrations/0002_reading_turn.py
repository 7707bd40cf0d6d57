from django.db import migrations, models


def in_turn(apps, schema_editor):
    """By the times, which are all there is of what was read before."""
    turns = {}
    for reading in apps.get_model("lessons", "Reading").objects.order_by("reached_at", "pk"):
        turns[reading.person_id] = reading.turn = turns.get(reading.person_id, 0) + 1
        reading.save(update_fields=["turn"])


class Migration(migrations.Migration):
    dependencies = [("lessons", "0001_reading")]

    operations = [
        migrations.AddField(
            model_name="reading",
            name="turn",
            field=models.PositiveIntegerField(
                default=0, help_text="the lesson in which somebody came on last has their highest"
            ),
        ),
        migrations.RunPython(in_turn, migrations.RunPython.noop),
    ]
