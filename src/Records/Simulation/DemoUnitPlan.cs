using Slantwise.Records.Units;
using Slantwise.Records.Units.Import;

namespace Slantwise.Records.Simulation;

/// <summary>The plan behind the first invented class's five lessons, with outcomes in a teacher's own words and one that no lesson works towards yet.</summary>
internal static class DemoUnitPlan
{
    private static readonly Outcome[] Outcomes =
    [
        Own("I hold a still shape and say which patches carry me."), Own("I keep a beat on the rope and land softly."),
        Own("I throw so that the next throw could hit, too."), Own("I say what I changed, and why."),
    ];

    private static readonly Dictionary<string, int> OutcomeOf = new()
    {
        ["One-foot balance"] = 0, ["Arabesque (front scale)"] = 0, ["V-sit"] = 0, ["Frog balance"] = 0, ["Rope jumping"] = 1, ["Target throw"] = 2,
    };

    /// <summary>The unit of a demo school's first class.</summary>
    public static TeachingUnit Of(DemoSchool demo)
    {
        var taught = demo.Classes[0];
        var lessons = demo.Lessons.Where(l => l.ClassId == taught.Id).OrderBy(l => l.Date).ToList();
        var sheets = demo.Sheets.ToDictionary(s => s.Id, s => s.Draft.Tasks);
        return new TeachingUnit
        {
            SchoolId = demo.School.Id,
            Id = OutcomeFiles.IdOf("unit", demo.School.Id.ToString()),
            ClassId = taught.Id,
            Name = "Still, springy, on target",
            FirstDay = lessons[0].Date,
            Content = new UnitContent
            {
                Outcomes = Outcomes,
                Lessons = [.. lessons.Select(l => new PlannedUnitLesson(
                    l.Title, l.Id,
                    [.. sheets[l.SheetId!.Value].Select(t => new UnitTask(t.TaskId, OutcomeOf.TryGetValue(t.Name, out var i) ? [Outcomes[i].Id] : []))], []))],
            },
        };
    }

    private static Outcome Own(string text) => new(OutcomeFiles.IdOf("outcome", text), "", text, "");
}
