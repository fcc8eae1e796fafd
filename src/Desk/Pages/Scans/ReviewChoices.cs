using System.Globalization;
using Slantwise.Desk.Pages.Results;
using Slantwise.Desk.Words;
using Slantwise.Engines.Marks;
using Slantwise.Records.Entries;
using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Intake;
using Slantwise.Records.Sheets;

namespace Slantwise.Desk.Pages.Scans;

/// <summary>What can be answered to a box, each by one key: what is shown by Enter, nothing by N or 0, any other value by its own.</summary>
public static class ReviewChoices
{
    // For numbers of more than one digit. Not among them: what means the same on every card.
    private const string Letters = "ABDFGHIJKLMOPQRTUVW";

    /// <summary>The answers: what is shown first and "nothing" beside it; where nothing is shown, in the order of the paper and "nothing" last.</summary>
    /// <param name="item">A box that is not seconds.</param>
    /// <param name="printed">The sheet it was printed from.</param>
    /// <param name="culture">The reader's language.</param>
    public static IReadOnlyList<ReviewChoice> Of(ScanItem item, SheetContent printed, CultureInfo culture)
    {
        var shown = Shown(item);
        var values = item.Question.Kind == SheetFieldKind.Cue ? [1] : item.Choices.ToList();
        var nothing = item.Doubt == ScanDoubt.Differs ? item.Before : item.Question.Kind == SheetFieldKind.Cue ? 0 : null;
        // A level that the pupil's own sheet does not print can have been typed, and the marks can show what the lesson's sheet no longer has.
        if (shown is { } said && !values.Contains(said)) values.Add(said);
        if (item.Doubt == ScanDoubt.Differs && nothing is { } before) values.Remove(before);
        List<ReviewChoice> choices = [.. values.Select((value, i) => Choice(value, KeyOf(item, value, i, culture)))];
        if (choices.Find(c => c.IsShown) is { } first)
        {
            choices.Remove(first);
            choices.Insert(0, first);
        }
        List<string> none = [ScanPageWords.Say("KeyNo")];
        if (!values.Contains(0) || item.Question.Kind != SheetFieldKind.Predicted) none.Add("0");
        // Beside what is shown, since those two are the usual answers; else after all others.
        choices.Insert(shown is null ? choices.Count : 1, new ReviewChoice(nothing, Nothing(item, printed, culture), "", none, false));
        return choices;

        ReviewChoice Choice(decimal value, string key)
        {
            var isShown = value == shown;
            return new ReviewChoice(value, Label(item, value, printed, culture), Detail(item, value, printed), isShown ? ["Enter", ScanPageWords.Say("KeyYes"), key] : [key], isShown);
        }
    }

    /// <summary>What the picture seems to show; none where nothing can be said, as with two marks where one belongs.</summary>
    /// <param name="item">A box.</param>
    public static decimal? Shown(ScanItem item) => item.Doubt switch
    {
        ScanDoubt.Differs => item.Value,
        ScanDoubt.Faint => Only(item, MarkVerdict.Doubtful),
        ScanDoubt.Unclear => Only(item, MarkVerdict.Marked),
        _ => null,
    };

    /// <summary>A value in words. A level has the number that is printed on this sheet, where it is: a pupil's own sheet counts what it offers.</summary>
    /// <param name="item">The box.</param>
    /// <param name="value">A value; none for nothing.</param>
    /// <param name="printed">The sheet it was printed from.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Label(ScanItem item, decimal? value, SheetContent printed, CultureInfo culture)
    {
        if (item.Question.Kind != SheetFieldKind.Level || value is not { } level) return ScanItemWords.Says(item, value, printed, culture);
        var place = Place(item, level);
        return place > 0 ? ScanPageWords.Say("Level", place) : Detail(item, level, printed);
    }

    /// <summary>A level's name; empty for any other value.</summary>
    /// <param name="item">The box.</param>
    /// <param name="value">The value.</param>
    /// <param name="printed">The sheet it was printed from.</param>
    public static string Detail(ScanItem item, decimal value, SheetContent printed)
    {
        var (task, level) = (item.Question.TaskNumber - 1, (int)value - 1);
        return item.Question.Kind == SheetFieldKind.Level && task >= 0 && task < printed.Tasks.Count && level >= 0 && level < printed.Tasks[task].Levels.Count
            ? printed.Tasks[task].Levels[level].Name
            : "";
    }

    private static decimal? Only(ScanItem item, MarkVerdict verdict)
    {
        var fields = item.Fields.Where(f => f.Verdict == verdict).ToList();
        return fields.Count == 1 && SheetField.FromKey(fields[0].Key) is { } field ? ScanItems.ValueOf(field) : null;
    }

    private static string Nothing(ScanItem item, SheetContent printed, CultureInfo culture) => item switch
    {
        { Doubt: ScanDoubt.Differs } => ScanPageWords.Say("KeepBefore", Label(item, item.Before, printed, culture)),
        { Question.Kind: SheetFieldKind.Cue } => ScanItemWords.Says(item, 0, printed, culture),
        { Doubt: ScanDoubt.Faint or ScanDoubt.Unclear } => ScanPageWords.Say("NotMarked"),
        _ => ScanPageWords.Say("LeaveEmpty"),
    };

    private static string KeyOf(ScanItem item, decimal value, int place, CultureInfo culture) => item.Question.Kind switch
    {
        SheetFieldKind.Next when Enum.IsDefined((NextLevel)(int)value) => ResultLetters.For(culture).Of((NextLevel)(int)value).ToString().ToUpperInvariant(),
        SheetFieldKind.Level => Place(item, value) is > 0 and var number ? Digit(number) : Letter(place),
        SheetFieldKind.Predicted or SheetFieldKind.TeacherSet => value is >= 0 and <= 9 && value == decimal.Truncate(value) ? Digit((int)value) : Letter(place),
        // As they stand on the paper: done, then not yet.
        _ => Digit(place + 1),
    };

    private static int Place(ScanItem item, decimal value)
    {
        for (var i = 0; i < item.Choices.Count; i++)
        {
            if (item.Choices[i] == value) return i + 1;
        }
        return 0;
    }

    private static string Digit(int number) => number <= 9 ? number.ToString(CultureInfo.InvariantCulture) : Letter(number);

    private static string Letter(int place) => Letters[place % Letters.Length].ToString();
}
