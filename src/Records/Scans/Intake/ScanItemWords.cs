using System.Globalization;
using Slantwise.Records.Checks;
using Slantwise.Records.Entries;
using Slantwise.Records.Sheets;
using Slantwise.Records.Words;

namespace Slantwise.Records.Scans.Intake;

/// <summary>An item in words: where it stands, what it asks, what it says, and why somebody has to look.</summary>
public static class ScanItemWords
{
    /// <summary>Where it stands and what it asks: "One-foot balance, set 2, trial 3: Done?".</summary>
    /// <param name="item">The item.</param>
    /// <param name="content">The sheet it was printed from.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Asks(ScanItem item, SheetContent content, CultureInfo culture)
    {
        var question = item.Question;
        var task = question.TaskNumber >= 1 && question.TaskNumber <= content.Tasks.Count ? content.Tasks[question.TaskNumber - 1] : null;
        var isTrial = question.Kind is SheetFieldKind.Held or SheetFieldKind.Seconds;
        // An observation sheet's number of a set is a pupil's row.
        int? set = question.Kind is SheetFieldKind.TeacherMet or SheetFieldKind.TeacherSet || question.SetNumber < 1 ? null : question.SetNumber;
        var place = new SheetPlace(task?.TaskId, task?.Name, set, isTrial ? question.Number : null);
        return $"{place.ToString(null, culture)}: {Ask(question, culture)}";
    }

    /// <summary>A value an item may have, in words: "level 3 (arms out)", "not yet".</summary>
    /// <param name="item">The item.</param>
    /// <param name="value">The value; none for nothing.</param>
    /// <param name="content">The sheet it was printed from.</param>
    /// <param name="culture">The reader's language.</param>
    /// <remarks>A level is named by the number that stands on this pupil's paper, which is its place among what was offered, and by its words.</remarks>
    public static string Says(ScanItem item, decimal? value, SheetContent content, CultureInfo culture)
    {
        if (value is not { } said) return ScanWords.Text("SaysNothing", culture);
        if (item.Question.Kind == SheetFieldKind.Level) return Level(item, said, content, culture);
        var key = item.Question.Kind switch
        {
            SheetFieldKind.Predicted when content.Predicts == PredictionKind.HoldS => "SaysSeconds",
            SheetFieldKind.Seconds => "SaysSeconds",
            SheetFieldKind.Held => said == 1 ? "SaysHeld" : "SaysNotYet",
            SheetFieldKind.Cue => said == 1 ? "SaysTicked" : "SaysOpen",
            SheetFieldKind.TeacherSet => "SaysSet",
            SheetFieldKind.TeacherMet => said == 1 ? "SaysMet" : "SaysNotMet",
            SheetFieldKind.Next => (NextLevel)(int)said switch { NextLevel.Harder => "SaysHarder", NextLevel.Easier => "SaysEasier", _ => "SaysSame" },
            _ => "SaysNumber",
        };
        return string.Format(culture, ScanWords.Text(key, culture), said);
    }

    /// <summary>Why somebody has to look, as a question.</summary>
    /// <param name="item">An item with a doubt.</param>
    /// <param name="content">The sheet it was printed from.</param>
    /// <param name="culture">The reader's language.</param>
    /// <returns>Empty for an item without a doubt.</returns>
    public static string Doubts(ScanItem item, SheetContent content, CultureInfo culture) => item.Doubt == ScanDoubt.None
        ? ""
        : string.Format(culture, ScanWords.Text("Doubt" + item.Doubt, culture), Says(item, item.Before, content, culture), Says(item, item.Value, content, culture));

    private static string Level(ScanItem item, decimal number, SheetContent content, CultureInfo culture)
    {
        var levels = item.Question.TaskNumber >= 1 && item.Question.TaskNumber <= content.Tasks.Count ? content.Tasks[item.Question.TaskNumber - 1].Levels : [];
        var name = number >= 1 && number <= levels.Count ? levels[(int)number - 1].Name : number.ToString(culture);
        var place = item.Choices.Index().FirstOrDefault(c => c.Item == number, (Index: -1, Item: number)).Index + 1;
        return place > 0 ? string.Format(culture, ScanWords.Text("SaysLevel", culture), place, name) : name;
    }

    private static string Ask(SheetField question, CultureInfo culture)
    {
        var key = question.Kind switch
        {
            SheetFieldKind.Level => "AskLevel",
            SheetFieldKind.Predicted => "AskPredicted",
            SheetFieldKind.Held => "AskHeld",
            SheetFieldKind.Seconds => "AskSeconds",
            SheetFieldKind.Cue => "AskCue",
            SheetFieldKind.Next => "AskNext",
            SheetFieldKind.TeacherMet => "AskTeacherMet",
            SheetFieldKind.TeacherSet => "AskTeacherSet",
            _ => "AskOther",
        };
        return string.Format(culture, ScanWords.Text(key, culture), question.Number);
    }
}
