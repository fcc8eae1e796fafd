using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Safety;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Simulation;

/// <summary>An invented school to look around in: two classes late in a unit of five lessons. Nobody in it exists.</summary>
/// <remarks>
/// Four lessons of each class are over, the fifth is due today or on the next school day with its sheet chosen and nothing written. Half of
/// the fourth lesson of the first class is not typed in yet.
/// </remarks>
public sealed partial record DemoSchool
{
    /// <summary>The school.</summary>
    public required School School { get; init; }

    /// <summary>Its two classes, 28 and 30 pupils.</summary>
    public required IReadOnlyList<SchoolClass> Classes { get; init; }

    /// <summary>All pupils, by class, then by label.</summary>
    public required IReadOnlyList<Pupil> Pupils { get; init; }

    /// <summary>Who is in which class.</summary>
    public required IReadOnlyList<Enrolment> Enrolments { get; init; }

    /// <summary>A few restrictions, one of which no longer holds.</summary>
    public required IReadOnlyList<Restriction> Restrictions { get; init; }

    /// <summary>The library's six tasks.</summary>
    public required IReadOnlyList<MovementTask> Tasks { get; init; }

    /// <summary>The five sheets with their latest drafts.</summary>
    public required IReadOnlyList<Sheet> Sheets { get; init; }

    /// <summary>What was printed, by sheet and version.</summary>
    public required IReadOnlyDictionary<Guid, IReadOnlyList<SheetContent>> FrozenContents { get; init; }

    /// <summary>Five lessons a class, earliest first within the class.</summary>
    public required IReadOnlyList<Lesson> Lessons { get; init; }

    /// <summary>The log: one near miss, with a task that is taught again in the last lesson.</summary>
    public IReadOnlyList<Incident> Incidents { get; init; } = [];

    /// <summary>What each class wrote down and what is true behind it, in the order of the classes.</summary>
    public required IReadOnlyList<SimulatedClass> Simulations { get; init; }

    /// <summary>Every entry of every lesson.</summary>
    public IEnumerable<Entry> Entries => Simulations.SelectMany(simulation => simulation.Entries);

    /// <summary>Saves everything to a store.</summary>
    /// <param name="store">Where to.</param>
    /// <param name="cancel">Stops between two saves; calling again completes what was begun.</param>
    /// <returns>False, and nothing was written, if this school is there already.</returns>
    public async Task<bool> SaveToAsync(IStore store, CancellationToken cancel = default)
    {
        var schoolId = School.Id;
        // The last thing written tells that all the rest is there.
        var last = Lessons[^1];
        if (await store.FindLessonAsync(schoolId, last.Id, cancel) is not null) return false;

        await store.SaveSchoolAsync(School, cancel);
        await store.SaveRosterAsync(schoolId, new() { Classes = Classes, Pupils = Pupils, Enrolments = Enrolments }, cancel);
        foreach (var restriction in Restrictions) await store.SaveRestrictionAsync(restriction, cancel);
        foreach (var task in Tasks) await store.SaveTaskAsync(task, cancel);
        foreach (var sheet in Sheets) await SaveAsync(store, sheet, cancel);
        foreach (var lesson in Lessons.Where(lesson => lesson != last)) await store.SaveLessonAsync(lesson, cancel);
        await store.SaveUnitAsync(DemoUnitPlan.Of(this), cancel);
        foreach (var batch in Entries.Chunk(1000)) await store.AppendEntriesAsync(schoolId, batch, cancel);
        foreach (var incident in Incidents) await store.SaveIncidentAsync(incident, cancel);
        // The first class's next lesson lies in the hall already.
        if (Lessons.LastOrDefault(l => l.ClassId == Classes[0].Id) is { } next && next != last)
            await DemoHall.SaveAsync(store, schoolId, next.Id, next.MatCount ?? 12, Sheets[^1].Draft, cancel);
        await store.SaveLessonAsync(last, cancel);
        return true;
    }

    private async Task SaveAsync(IStore store, Sheet sheet, CancellationToken cancel)
    {
        var contents = FrozenContents[sheet.Id];
        for (var version = 1; version <= contents.Count; version++)
        {
            if (await store.FindSheetVersionAsync(sheet.SchoolId, sheet.Id, version, cancel) is not null) continue;
            await store.SaveSheetAsync(sheet with { Draft = contents[version - 1], LatestVersion = version - 1 }, cancel);
            await store.FreezeSheetAsync(sheet.SchoolId, sheet.Id, cancel);
        }
        await store.SaveSheetAsync(sheet, cancel);
    }
}
