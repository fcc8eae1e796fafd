using Slantwise.Engines.Marks;
using Slantwise.Records.Sheets;

namespace Slantwise.Records.Scans.Intake;

/// <summary>From fields to what they say: which of those that exclude each other is marked, or why that cannot be told.</summary>
public static class ScanItems
{
    /// <summary>What a form's fields say.</summary>
    /// <param name="layout">The form.</param>
    /// <param name="fields">A reading a field, any order.</param>
    /// <param name="content">The sheet it was printed from.</param>
    /// <returns>An item a question, in the layout's order; fields of no known meaning are passed over. Nothing by hand is in it.</returns>
    public static IReadOnlyList<ScanItem> Of(SheetLayout layout, IReadOnlyList<FieldReading> fields, SheetContent content)
    {
        var readings = fields.ToDictionary(f => f.Key);
        var items = layout.Fields
            .Select(f => (Field: SheetField.FromKey(f.Key), Reading: readings.GetValueOrDefault(f.Key)))
            .Where(f => f is { Field: not null, Reading: not null })
            .GroupBy(f => QuestionOf(f.Field!.Value))
            .Select(group => Of(group.Key, [.. group.Select(f => f.Reading!)], content))
            .ToList();
        return [.. items.Select(item => WithMissing(item, items))];
    }

    /// <summary>The question a field belongs to.</summary>
    /// <param name="field">A field.</param>
    public static SheetField QuestionOf(SheetField field) => field.Kind switch
    {
        SheetFieldKind.Held or SheetFieldKind.NotYet => field with { Kind = SheetFieldKind.Held },
        SheetFieldKind.TeacherMet or SheetFieldKind.TeacherNotMet => field with { Kind = SheetFieldKind.TeacherMet },
        SheetFieldKind.Level or SheetFieldKind.Predicted or SheetFieldKind.Next or SheetFieldKind.TeacherSet => field with { Number = 0 },
        _ => field,
    };

    /// <summary>What a mark in a field says.</summary>
    /// <param name="field">A field.</param>
    public static decimal ValueOf(SheetField field) => field.Kind switch
    {
        SheetFieldKind.Level or SheetFieldKind.Predicted or SheetFieldKind.Next or SheetFieldKind.TeacherSet => field.Number,
        SheetFieldKind.NotYet or SheetFieldKind.TeacherNotMet => 0,
        _ => 1,
    };

    private static ScanItem Of(SheetField question, IReadOnlyList<FieldReading> fields, SheetContent content)
    {
        var item = new ScanItem { Question = question, Fields = fields };
        var marked = fields.Where(f => f.Verdict == MarkVerdict.Marked).ToList();
        var doubtfulCount = fields.Count(f => f.Verdict == MarkVerdict.Doubtful);
        if (marked.Count > 1) return item with { Doubt = ScanDoubt.SeveralMarked };
        if (marked.Count + doubtfulCount > 1) return item with { Doubt = ScanDoubt.Unclear };
        if (doubtfulCount == 1) return item with { Doubt = ScanDoubt.Faint };
        if (marked.Count == 0) return item;
        var value = ValueOf(SheetField.FromKey(marked[0].Key)!.Value);
        return IsOn(content, question, value) ? item with { Value = value } : item with { Doubt = ScanDoubt.NotOnSheet };
    }

    // Trials nobody chose a level for cannot be read as anything, nor can a check of nobody knows which set; a set or row that was never used asks nothing.
    private static ScanItem WithMissing(ScanItem item, List<ScanItem> all)
    {
        if (item is not { Value: null, Doubt: ScanDoubt.None }) return item;
        return item.Question.Kind switch
        {
            SheetFieldKind.Level when IsUsed(SheetFieldKind.Held) => item with { Doubt = ScanDoubt.ChoiceMissing },
            SheetFieldKind.TeacherSet when IsUsed(SheetFieldKind.TeacherMet) => item with { Doubt = ScanDoubt.SetMissing },
            _ => item,
        };

        bool IsUsed(SheetFieldKind kind) => all.Any(i => i.Question.Kind == kind && i.Question.TaskNumber == item.Question.TaskNumber
            && i.Question.SetNumber == item.Question.SetNumber && (i.Value is not null || i.Doubt != ScanDoubt.None));
    }

    internal static bool IsOn(SheetContent content, SheetField question, decimal value)
    {
        if (question.TaskNumber < 1 || question.TaskNumber > content.Tasks.Count) return false;
        var task = content.Tasks[question.TaskNumber - 1];
        var isRow = question.Kind is SheetFieldKind.TeacherMet or SheetFieldKind.TeacherSet;
        if (!isRow && (question.SetNumber < 1 || question.SetNumber > content.SetCount)) return false;
        return question.Kind switch
        {
            SheetFieldKind.Level => value >= 1 && value <= task.Levels.Count,
            SheetFieldKind.Predicted => content.Predicts == PredictionKind.HoldS || content.Predicts == PredictionKind.SuccessCount && value <= content.TrialCount,
            SheetFieldKind.Held or SheetFieldKind.Seconds => question.Number >= 1 && question.Number <= content.TrialCount,
            SheetFieldKind.Cue or SheetFieldKind.TeacherMet => question.Number >= 1 && question.Number <= task.Cues.Count,
            SheetFieldKind.TeacherSet => value >= 1 && value <= content.SetCount,
            SheetFieldKind.Next => Enum.IsDefined((Entries.NextLevel)(int)value),
            _ => false,
        };
    }
}
