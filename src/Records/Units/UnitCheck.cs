using Slantwise.Records.Checks;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Units;

/// <summary>Whether a unit can be kept.</summary>
public static class UnitCheck
{
    /// <summary>Looks at a unit beside the school's classes.</summary>
    /// <param name="unit">The unit as it is being planned.</param>
    /// <param name="classes">All classes of the school.</param>
    /// <returns>Findings in the order of the unit's parts. Empty where there is nothing to say.</returns>
    public static IReadOnlyList<Finding> Of(TeachingUnit unit, IReadOnlyList<SchoolClass> classes)
    {
        var findings = new List<Finding>();
        var content = unit.Content;
        if (!classes.Any(c => c.SchoolId == unit.SchoolId && c.Id == unit.ClassId)) findings.Add(Finding.Refused("UnitClassUnknown"));
        if (string.IsNullOrWhiteSpace(unit.Name)) findings.Add(Finding.Refused("UnitNameEmpty", Limits.NameLength));
        else TextCheck.Add(findings, unit.Name, Limits.NameLength, "UnitNameTooLong");
        if (content.Outcomes.Count > UnitLimits.OutcomeCount) findings.Add(Finding.Refused("UnitOutcomeCount", content.Outcomes.Count, UnitLimits.OutcomeCount));
        for (var i = 0; i < content.Outcomes.Count; i++)
        {
            var outcome = content.Outcomes[i];
            if (outcome.Code.Length + outcome.Text.Length == 0) findings.Add(Finding.Refused("OutcomeEmpty", i + 1));
            TextCheck.Add(findings, outcome.Code, UnitLimits.CodeLength, "OutcomeCodeTooLong", i + 1);
            TextCheck.Add(findings, outcome.Text, UnitLimits.OutcomeLength, "OutcomeTextTooLong", i + 1);
            TextCheck.Add(findings, outcome.Framework, UnitLimits.FrameworkLength, "OutcomeFrameworkTooLong", i + 1);
        }
        if (content.Lessons.Count > UnitLimits.LessonCount) findings.Add(Finding.Refused("UnitLessonCount", content.Lessons.Count, UnitLimits.LessonCount));
        for (var i = 0; i < content.Lessons.Count; i++)
        {
            var lesson = content.Lessons[i];
            TextCheck.Add(findings, lesson.Title, Limits.NameLength, "UnitLessonTitleTooLong", i + 1);
            if (lesson.Tasks.Count > UnitLimits.TaskCount) findings.Add(Finding.Refused("UnitLessonTaskCount", i + 1, lesson.Tasks.Count, UnitLimits.TaskCount));
            if (lesson.Aims.Count > UnitLimits.AimCount) findings.Add(Finding.Refused("UnitLessonAimCount", i + 1, lesson.Aims.Count, UnitLimits.AimCount));
            foreach (var aim in lesson.Aims) TextCheck.Add(findings, aim, UnitLimits.AimLength, "UnitLessonAimTooLong", i + 1);
        }
        TextCheck.Add(findings, content.Notes, UnitLimits.NotesLength, "UnitNotesTooLong");
        return findings;
    }
}
