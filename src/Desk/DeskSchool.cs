using System.Globalization;
using Microsoft.Extensions.Logging;
using Slantwise.Desk.Pages.Evidence;
using Slantwise.Desk.Words;
using Slantwise.Records;
using Slantwise.Records.Entries;
using Slantwise.Records.Schools;

namespace Slantwise.Desk;

/// <summary>What every page of the desk starts from: the store, the one school in it, and the clock.</summary>
/// <param name="store">Where the records are.</param>
/// <param name="clock">Tells the day and dates what is made.</param>
/// <param name="shelf">Keeps what pages read of each class.</param>
/// <param name="log">Hears about failures in full; pages show a sentence.</param>
public sealed class DeskSchool(IStore store, TimeProvider clock, ReadingsShelf shelf, ILogger<DeskSchool> log)
{
    private School? _school;

    /// <summary>Where the records are.</summary>
    public IStore Store => store;

    /// <summary>Tells the day and dates what is made.</summary>
    public TimeProvider Clock => clock;

    /// <summary>What pages read of each class, kept.</summary>
    public ReadingsShelf Shelf => shelf;

    /// <summary>Whether the store holds a school; false before <see cref="LoadAsync"/>.</summary>
    public bool HasSchool => _school is not null;

    /// <summary>The school. Pages are only shown when there is one.</summary>
    /// <exception cref="InvalidOperationException">Nothing was loaded, or the store holds no school.</exception>
    public School School => _school ?? throw new InvalidOperationException("No school is loaded: call LoadAsync first and look at HasSchool.");

    /// <summary>The school's id.</summary>
    /// <exception cref="InvalidOperationException">Nothing was loaded, or the store holds no school.</exception>
    public Guid SchoolId => School.Id;

    /// <summary>Today, in the calendar of the machine the program runs on.</summary>
    public DateOnly Today => DateOnly.FromDateTime(clock.GetLocalNow().DateTime);

    /// <summary>Loads the school, or loads it again. With several in one store, the first by name.</summary>
    public async Task LoadAsync(CancellationToken cancel = default) =>
        _school = (await store.ListSchoolsAsync(cancel)).FirstOrDefault();

    /// <summary>Saves the school and goes on with it.</summary>
    public async Task SaveAsync(School school, CancellationToken cancel = default)
    {
        await store.SaveSchoolAsync(school, cancel);
        _school = school;
    }

    /// <summary>Erases a pupil, from the store and from what pages have kept.</summary>
    /// <param name="pupilId">The pupil.</param>
    public async Task ErasePupilAsync(Guid pupilId)
    {
        // Before, too: what a page would read meanwhile is not kept.
        shelf.Forget(SchoolId);
        try
        {
            await store.ErasePupilAsync(SchoolId, pupilId);
        }
        finally
        {
            shelf.Forget(SchoolId);
        }
    }

    /// <summary>A new id.</summary>
    public Guid NewId() => EntryId.New(clock);

    /// <summary>Does something that may fail, such as a save. The one place where the desk turns a failure into words.</summary>
    /// <param name="work">What to do.</param>
    /// <returns>None when it was done; otherwise a sentence to show, and what was typed is to stay on the page.</returns>
    public async Task<string?> TryAsync(Func<Task> work)
    {
        try
        {
            await work();
            return null;
        }
        catch (Exception failure)
        {
            log.LogError(failure, "A page could not finish its work.");
            return DeskWords.Say("SaveFailed", clock.GetLocalNow().ToString("T", CultureInfo.CurrentCulture));
        }
    }
}
