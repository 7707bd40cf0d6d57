from django.db import migrations, models


class Migration(migrations.Migration):

    dependencies = [
        ('cohorts', '0005_deleted_accounts'),
    ]

    operations = [
        # The start of a window has passed: as the end of a wait it counts for nothing.
        migrations.RenameField(
            model_name='tries',
            old_name='since',
            new_name='worn_off_at',
        ),
        migrations.RemoveField(
            model_name='tries',
            name='count',
        ),
        migrations.AddField(
            model_name='tries',
            name='about',
            field=models.CharField(blank=True, db_index=True, default='', max_length=64),
            preserve_default=False,
        ),
    ]
