using System.Globalization;
using Slantwise.Desk.Pages.Scans;
using Slantwise.Engines.Marks;
using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Intake;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Surface.Tests.Desk.Scans;

public sealed class ReviewChoicesTests
{
    private static readonly SheetContent Sheet = new()
    {
        Title = "Towers",
        Tasks =
        [
            new SheetTask
            {
                TaskId = new("01990000-0000-7000-8000-00000000b001"), Name = "Tower", Cues = ["Wide feet", "Look up"],
                Levels = [.. Enumerable.Range(1, 6).Select(n => new Level { Id = new Guid(n, 0, 0, new byte[8]), Name = $"Tower {n}", Dose = new Dose(DoseKind.HoldS, 3) })],
            },
        ],
        TrialCount = 10,
    };

    /// <summary>A key that stood for two answers, or for an answer and a tool, would enter what nobody meant.</summary>
    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void Of_EveryKindAndDoubt_EachKeyStandsForOneAnswerAndNoTool(string language)
    {
        var culture = CultureInfo.CurrentUICulture;
        CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(language);
        try
        {
            foreach (var item in Items())
            {
                var choices = ReviewChoices.Of(item, Sheet, CultureInfo.CurrentUICulture);
                List<string> keys = [.. choices.SelectMany(c => c.BrowserKeys.Split(' '))];
                Assert.Equal(keys.Count, keys.Distinct().Count());
                Assert.DoesNotContain("z", keys);
                Assert.DoesNotContain("c", keys);
                Assert.Equal(choices.Count, choices.Select(c => c.Value).Distinct().Count());
                Assert.All(choices, c => Assert.NotEmpty(c.Label));
                Assert.Equal(ReviewChoices.Shown(item) is not null, choices.Any(c => c.Keys.Contains("Enter")));
            }
        }
        finally
        {
            CultureInfo.CurrentUICulture = culture;
        }
    }

    [Fact]
    public void Of_PaperOfAPupilWithoutTheFirstLevel_NumbersWhatIsPrinted()
    {
        // Printed are the sheet's levels 2, 4 and 5 as 1, 2 and 3.
        var item = Item(SheetFieldKind.Level, [2, 4, 5], ScanDoubt.SeveralMarked, []);
        var choices = ReviewChoices.Of(item, Sheet, CultureInfo.GetCultureInfo("en"));
        Assert.Equal([(2m, "1", "Tower 2"), (4m, "2", "Tower 4"), (5m, "3", "Tower 5")], choices.Where(c => c.Value is not null).Select(c => (c.Value!.Value, c.Keys[0], c.Detail)));
    }

    [Fact]
    public void Shown_TwoMarksWhereOneBelongs_SaysNothing()
    {
        Assert.Null(ReviewChoices.Shown(Item(SheetFieldKind.Level, [1, 2, 3], ScanDoubt.SeveralMarked, [1, 2])));
        Assert.Equal(2, ReviewChoices.Shown(Item(SheetFieldKind.Level, [1, 2, 3], ScanDoubt.Faint, [], doubtful: 2)));
        Assert.Equal(3, ReviewChoices.Shown(Item(SheetFieldKind.Level, [1, 2, 3], ScanDoubt.Unclear, [3], doubtful: 2)));
    }

    [Theory]
    [InlineData("", true, null)]
    [InlineData(" 4,25 ", true, "4.2")]
    [InlineData("12.5", true, "12.5")]
    [InlineData("601", false, null)]
    [InlineData("-1", false, null)]
    [InlineData("four", false, null)]
    public void TrySeconds_Text_IsSecondsOrNot(string text, bool isTaken, string? seconds)
    {
        Assert.Equal(isTaken, ReviewText.TrySeconds(text, out var read));
        Assert.Equal(seconds is null ? null : decimal.Parse(seconds, CultureInfo.InvariantCulture), read);
    }

    private static IEnumerable<ScanItem> Items()
    {
        foreach (var doubt in Enum.GetValues<ScanDoubt>().Where(d => d is not (ScanDoubt.None or ScanDoubt.ByHand)))
        {
            yield return Item(SheetFieldKind.Level, [1, 2, 3, 4, 5, 6], doubt, [2], doubtful: 3);
            yield return Item(SheetFieldKind.Predicted, [.. Enumerable.Range(0, 11)], doubt, [10], doubtful: 0);
            yield return Item(SheetFieldKind.Predicted, [0, 5, 10, 15, 20, 30, 45, 60], doubt, [5], doubtful: 60);
            yield return Item(SheetFieldKind.Held, [1, 0], doubt, [1], doubtful: 0);
            yield return Item(SheetFieldKind.TeacherMet, [1, 0], doubt, [0], doubtful: 1);
            yield return Item(SheetFieldKind.Cue, [1], doubt, [], doubtful: 1);
            yield return Item(SheetFieldKind.Next, [3, 1, 2], doubt, [1], doubtful: 2);
            yield return Item(SheetFieldKind.TeacherSet, [1, 2, 3, 4], doubt, [1], doubtful: 2);
        }
    }

    private static ScanItem Item(SheetFieldKind kind, int[] values, ScanDoubt doubt, int[] marked, int? doubtful = null)
    {
        var fields = values.Select(value =>
        {
            var key = kind switch
            {
                SheetFieldKind.Held => new SheetField(value == 1 ? kind : SheetFieldKind.NotYet, 1, 1, 1),
                SheetFieldKind.TeacherMet => new SheetField(value == 1 ? kind : SheetFieldKind.TeacherNotMet, 1, 1, 1),
                SheetFieldKind.Cue => new SheetField(kind, 1, 1, 1),
                _ => new SheetField(kind, 1, 1, value),
            };
            var verdict = marked.Contains(value) ? MarkVerdict.Marked : value == doubtful && doubt != ScanDoubt.SeveralMarked ? MarkVerdict.Doubtful : MarkVerdict.Empty;
            return new FieldReading(key.Key, verdict, 0.5);
        }).ToList();
        var item = new ScanItem { Question = ScanItems.QuestionOf(SheetField.FromKey(fields[0].Key)!.Value), Fields = fields, Doubt = doubt };
        return doubt == ScanDoubt.Differs ? item with { Value = values[0], Before = kind == SheetFieldKind.Cue ? 0 : values[^1] } : item;
    }
}
