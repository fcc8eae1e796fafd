using Slantwise.Records.Roster;
using Slantwise.Records.Schools;
using Slantwise.Records.Tests.Entries;

namespace Slantwise.Records.Tests.Roster;

/// <summary>Invented roster files, and a school in memory that takes imports.</summary>
internal static class RosterSamples
{
    private static readonly string[] Tables = ["manifest.csv", "orgs.csv", "classes.csv", "users.csv", "roles.csv", "enrollments.csv"];

    public static RosterFile File(string name) => RosterFile.Read(name, System.IO.File.ReadAllBytes(Path.Combine(Checkout.Root, "tests/Records.Tests/Roster/Samples", name)));

    public static IReadOnlyList<RosterFile> OneRoster() => Tables.Select(t => File("oneroster/" + t)).ToList();

    /// <summary>The set with one table's text changed.</summary>
    public static IReadOnlyList<RosterFile> OneRoster(string table, Func<string, string> change) =>
        OneRoster().Select(f => f.Name.EndsWith(table, StringComparison.Ordinal) ? f with { Text = change(f.Text) } : f).ToList();
}

internal sealed class SchoolInMemory
{
    public List<SchoolClass> Classes { get; } = [];

    public List<Pupil> Pupils { get; } = [];

    public List<Enrolment> Enrolments { get; } = [];

    public RosterPlan Plan(params IReadOnlyList<RosterFile> files) =>
        RosterPlan.Of(RosterFiles.Read(files), InventedLesson.SchoolId, Classes, Pupils, Enrolments, InventedLesson.Clock);

    public RosterPlan PlanText(string text) => Plan(new RosterFile("pupils.csv", text));

    public void Take(RosterSave save)
    {
        foreach (var item in save.Classes) Put(Classes, item, c => c.Id == item.Id);
        foreach (var item in save.Pupils) Put(Pupils, item, p => p.Id == item.Id);
        foreach (var item in save.Enrolments) Put(Enrolments, item, e => (e.ClassId, e.PupilId) == (item.ClassId, item.PupilId));
    }

    public IEnumerable<string> Labels(string className)
    {
        var id = Classes.Single(c => c.Name == className).Id;
        var here = Enrolments.Where(e => e.ClassId == id && e.IsCurrent).Select(e => e.PupilId).ToHashSet();
        return Pupils.Where(p => here.Contains(p.Id)).Select(p => p.Label).Order(StringComparer.Ordinal);
    }

    private static void Put<T>(List<T> list, T item, Predicate<T> isIt)
    {
        list.RemoveAll(isIt);
        list.Add(item);
    }
}
