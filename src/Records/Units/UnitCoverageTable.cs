using Slantwise.Records.Evidence.Tables;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Units;

/// <summary>The coverage of a unit as a spreadsheet takes it.</summary>
public static class UnitCoverageTable
{
    /// <summary>One row an outcome and lesson, planned or not.</summary>
    /// <param name="content">What is planned.</param>
    /// <param name="records">Lessons of the calendar, any order; those the unit is not tied to are passed over.</param>
    public static EvidenceTable Of(UnitContent content, IReadOnlyList<LessonRecord> records)
    {
        var days = records.DistinctBy(r => r.Lesson.Id).ToDictionary(r => r.Lesson.Id, r => r.Lesson.Date);
        return new EvidenceTable(
            "coverage",
            ["code", "text", "framework", "lesson", "title", "day", "planned_tasks", "pupils_tried", "tries"],
            [.. from row in UnitCoverage.Of(content, records).Outcomes
                from cell in row.Lessons.Select((c, i) => (Cell: c, Number: i + 1, Lesson: content.Lessons[i]))
                select (IReadOnlyList<object?>)[
                    row.Outcome.Code, row.Outcome.Text, row.Outcome.Framework, cell.Number, cell.Lesson.Title,
                    cell.Lesson.LessonId is { } id && days.TryGetValue(id, out var day) ? day : null,
                    cell.Cell.PlannedTaskCount, cell.Cell.TriedPupilCount, cell.Cell.TryCount]]);
    }
}
