using Slantwise.Engines.Marks;

namespace Slantwise.Engines.Tests.Marks;

/// <summary>A form like those we print: round fields for choices, boxes for trials, anchors at the corners and along two edges.</summary>
internal static class TestForm
{
    public static readonly SheetLayout A4 = new(210, 297, [.. Anchors(210, 297)], new(170, 258, 20), [.. Fields()],
        [new("Words", 20, 262, 120, 16), new("Because", 20, 236, 120, 12)]);

    /// <summary>Another form of the same size and anchors, its fields elsewhere.</summary>
    public static readonly SheetLayout Other = A4 with { Fields = [.. OtherFields()] };

    private static IEnumerable<Anchor> Anchors(double w, double h)
    {
        yield return new(9, 9, 5, IsHollow: true);
        yield return new(w - 9, 9, 5);
        yield return new(w - 9, h - 9, 5);
        yield return new(9, h - 9, 5);
        foreach (var part in (double[])[.25, .5, .75])
        {
            yield return new(9, 9 + part * (h - 18), 2.5);
            yield return new(w - 9, 9 + part * (h - 18), 2.5);
        }
    }

    private static IEnumerable<MarkField> Fields()
    {
        for (var set = 1; set <= 4; set++)
        {
            var y = 35 + (set - 1) * 48;
            for (var level = 1; level <= 6; level++) yield return new($"Level-1-{set}-{level}", $"Level-1-{set}", 20 + (level - 1) * 12, y, 6, 6, true);
            for (var n = 0; n <= 10; n++) yield return new($"Predicted-1-{set}-{n}", $"Predicted-1-{set}", 20 + n * 8, y + 15, 4.5, 4.5, true);
            for (var trial = 1; trial <= 6; trial++)
            {
                yield return new($"Held-1-{set}-{trial}", $"Trial-1-{set}-{trial}", 120 + (trial - 1) * 12, y, 5, 5, false);
                yield return new($"NotYet-1-{set}-{trial}", $"Trial-1-{set}-{trial}", 120 + (trial - 1) * 12, y + 10, 5, 5, false);
            }
            for (var next = 1; next <= 3; next++) yield return new($"Next-1-{set}-{next}", $"Next-1-{set}", 120 + (next - 1) * 24, y + 26, 6, 6, true);
        }
    }

    private static IEnumerable<MarkField> OtherFields()
    {
        for (var row = 0; row < 8; row++)
            for (var column = 0; column < 7; column++)
                yield return new($"F-{row}-{column}", "", 26.5 + column * 21.3, 41.7 + row * 24.1, 7, 5, column % 2 == 0);
    }
}
