using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Units;

namespace Slantwise.Records.Checks;

/// <summary>Whether a lesson can be kept, and what to point out.</summary>
public static class LessonCheck
{
    /// <summary>Looks at a lesson beside the school's classes and its sheet.</summary>
    /// <param name="lesson">The lesson as it is being planned.</param>
    /// <param name="classes">All classes of the school.</param>
    /// <param name="sheet">The sheet the lesson names; none if it names none or the school has no such sheet.</param>
    /// <returns>Findings in the order of the lesson's parts. Empty where there is nothing to say.</returns>
    public static IReadOnlyList<Finding> Of(Lesson lesson, IReadOnlyList<SchoolClass> classes, Sheet? sheet)
    {
        var findings = new List<Finding>();
        var schoolClass = classes.FirstOrDefault(c => c.SchoolId == lesson.SchoolId && c.Id == lesson.ClassId);
        if (lesson.ClassId == Guid.Empty) findings.Add(Finding.Refused("LessonHasNoClass"));
        else if (schoolClass is null) findings.Add(Finding.Refused("LessonClassUnknown"));
        else if (schoolClass.KeepUntil is { } keepUntil && lesson.Date > keepUntil) findings.Add(Finding.Flagged("LessonAfterKeepUntil", schoolClass.Name, keepUntil));
        TextCheck.Add(findings, lesson.Title, Limits.NameLength, "LessonTitleTooLong");
        AddSheet(findings, lesson, sheet);
        if (lesson.MatCount is < 0 or > Limits.MatCount) findings.Add(Finding.Refused("LessonMatCount", lesson.MatCount, Limits.MatCount));
        for (var i = 0; i < lesson.Phases.Count; i++)
        {
            var phase = lesson.Phases[i];
            if (!Enum.IsDefined(phase.Kind)) findings.Add(Finding.Refused("PhaseKindUnknown", i + 1));
            if (phase.DurationMin is < 1 or > Limits.PhaseMin) findings.Add(Finding.Refused("PhaseDuration", i + 1, phase.DurationMin, Limits.PhaseMin));
            TextCheck.Add(findings, phase.Note, Limits.SentenceLength, "PhaseNoteTooLong", i + 1);
        }
        AddList(findings, lesson.Aims, UnitLimits.AimCount, "LessonAimCount", "LessonAimTooLong");
        AddList(findings, lesson.Demonstration, UnitLimits.DemonstrationCount, "LessonDemonstrationCount", "LessonDemonstrationTooLong");
        return findings;
    }

    private static void AddList(List<Finding> findings, IReadOnlyList<string> lines, int mostCount, string countKey, string lengthKey)
    {
        if (lines.Count > mostCount) findings.Add(Finding.Refused(countKey, lines.Count, mostCount));
        for (var i = 0; i < lines.Count; i++) TextCheck.Add(findings, lines[i], UnitLimits.AimLength, lengthKey, i + 1);
    }

    private static void AddSheet(List<Finding> findings, Lesson lesson, Sheet? sheet)
    {
        if (lesson.SheetId is not { } sheetId)
        {
            findings.Add(lesson.SheetVersion is null ? Finding.Flagged("LessonHasNoSheet") : Finding.Refused("LessonVersionWithoutSheet"));
        }
        else if (sheet is null || sheet.Id != sheetId || sheet.SchoolId != lesson.SchoolId) findings.Add(Finding.Refused("LessonSheetUnknown"));
        else if (lesson.SheetVersion is { } version && (version < 1 || version > sheet.LatestVersion))
        {
            findings.Add(Finding.Refused("LessonVersionUnknown", sheet.Name, version, sheet.LatestVersion));
        }
    }
}
