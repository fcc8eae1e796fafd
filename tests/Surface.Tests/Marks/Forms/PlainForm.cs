using Slantwise.Engines.Marks;

namespace Slantwise.Surface.Tests.Marks.Forms;

/// <summary>
/// A form as a printed sheet has it, without a lesson behind it: two tasks of three sets, with levels, predictions, trials, cues and decisions, in sizes and
/// places that differ from seed to seed.
/// </summary>
internal static class PlainForm
{
    /// <summary>A form of A4 size.</summary>
    public static SheetLayout Of(ulong seed)
    {
        var luck = new Luck(seed, 11);
        var (width, height) = (210.0, 297.0);
        var round = luck.Between(5, 6);
        var box = luck.Between(4.6, 5.6);
        var fields = new List<MarkField>();
        var writings = new List<WrittenField>();
        var y = luck.Between(46, 54);
        for (var task = 1; task <= 2; task++)
        {
            for (var set = 1; set <= 3; set++)
            {
                AddRow(fields, $"Level-{task}-{set}", $"Level-{task}-{set}", 20, y, 5, round, round + luck.Between(2.2, 4), true, false);
                AddRow(fields, $"Predicted-{task}-{set}", $"Predicted-{task}-{set}", 72, y, 6, round * .9, round * .9 + luck.Between(1.6, 2.6), true, false);
                for (var trial = 1; trial <= 5; trial++)
                {
                    var (x, group) = (20 + (trial - 1) * 17.0, $"Trial-{task}-{set}-{trial}");
                    fields.Add(new($"Held-{task}-{set}-{trial}", group, x, y + 11, box, box, false));
                    fields.Add(new($"NotYet-{task}-{set}-{trial}", group, x + box + luck.Between(1.4, 2.5), y + 11, box, box, false));
                }
                AddRow(fields, $"Cue-{task}-{set}", "", 110, y + 11, 4, box, box + luck.Between(2, 4), false, false);
                AddRow(fields, $"Next-{task}-{set}", $"Next-{task}-{set}", 150, y - 1, 3, round, round + luck.Between(9, 12), true, false);
                writings.Add(new($"Because-{task}-{set}", 148, y + 12, 50, 8));
                y += luck.Between(22, 25);
            }
            writings.Add(new($"OwnWords-{task}", 20, y, 110, 14));
            y += 24;
        }
        return new(width, height, Anchors(width, height), new(width - 40, height - 40, 20), fields, writings);
    }

    private static void AddRow(List<MarkField> fields, string key, string group, double x, double y, int count, double size, double step, bool isRound, bool isColumn)
    {
        for (var i = 0; i < count; i++)
            fields.Add(new($"{key}-{i + 1}", group, isColumn ? x : x + i * step, isColumn ? y + i * step : y, size, size, isRound));
    }

    private static List<Anchor> Anchors(double width, double height)
    {
        const double Inset = 9;
        List<Anchor> anchors =
        [
            new(Inset, Inset, 5, true), new(width - Inset, Inset, 5), new(width - Inset, height - Inset, 5), new(Inset, height - Inset, 5),
        ];
        foreach (var share in new[] { .25, .5, .75 })
        {
            anchors.Add(new(Inset, Inset + share * (height - 2 * Inset), 2.5));
            anchors.Add(new(width - Inset, Inset + share * (height - 2 * Inset), 2.5));
        }
        return anchors;
    }
}
