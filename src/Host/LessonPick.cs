using System.CommandLine;
using System.Globalization;
using Slantwise.Host.Answers;
using Slantwise.Host.Words;
using Slantwise.Records;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;

namespace Slantwise.Host;

/// <summary>The options that name a lesson, and how they are read.</summary>
internal sealed class LessonPick
{
    private const string Latest = "latest";
    private const string Next = "next";

    /// <summary>An id, a date, <c>latest</c> or <c>next</c>.</summary>
    public Option<string?> Lesson { get; } = new("--lesson") { Description = HostWords.Say("OptionLesson"), HelpName = "ID|DATE|latest|next" };

    /// <summary>The class, where several have a lesson that day.</summary>
    public Option<string?> Class { get; } = new("--class") { Description = HostWords.Say("OptionClass"), HelpName = "NAME" };

    /// <summary>Adds both to a command.</summary>
    public void AddTo(Command command)
    {
        command.Add(Lesson);
        command.Add(Class);
    }

    /// <summary>The lesson that is asked for; the latest where none is named.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="store">Where lessons are.</param>
    /// <param name="school">The school.</param>
    /// <param name="isWritten">Whether <c>latest</c> means the latest with entries, where there is one.</param>
    /// <param name="cancel">Stops the looking.</param>
    public async Task<Lesson> LessonAsync(ParseResult parsed, IStore store, School school, bool isWritten, CancellationToken cancel)
    {
        var asked = parsed.GetValue(Lesson) ?? Latest;
        var lessons = await store.ListLessonsAsync(school.Id, cancel);
        if (Guid.TryParse(asked, out var id)) return lessons.FirstOrDefault(l => l.Id == id) ?? throw Refusal.Of("NoSuchLesson", asked);

        if (parsed.GetValue(Class) is { } name)
        {
            var taught = await ClassAsync(name, store, school, cancel);
            lessons = lessons.Where(l => l.ClassId == taught.Id).ToList();
        }
        if (lessons.Count == 0) throw Refusal.Of("NoLesson");
        if (string.Equals(asked, Latest, StringComparison.OrdinalIgnoreCase)) return await LatestAsync(lessons, store, isWritten, cancel);
        if (string.Equals(asked, Next, StringComparison.OrdinalIgnoreCase))
        {
            var today = DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);
            return lessons.Where(l => l.Date >= today).MinBy(l => l.Date) ?? throw Refusal.Of("NoNextLesson");
        }

        if (!DateOnly.TryParseExact(asked, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
            throw Refusal.Of("LessonUnclear", asked);
        var onDay = lessons.Where(l => l.Date == day).ToList();
        if (onDay.Count == 1) return onDay[0];
        if (onDay.Count == 0) throw Refusal.Of("NoLessonOnDay", asked);
        throw Refusal.Of("SeveralLessonsOnDay", asked, onDay.Count);
    }

    /// <summary>The class of a name, spelt in capitals or not.</summary>
    public static async Task<SchoolClass> ClassAsync(string name, IStore store, School school, CancellationToken cancel)
    {
        var classes = await store.ListClassesAsync(school.Id, cancel);
        return classes.FirstOrDefault(c => c.Name == name)
            ?? classes.FirstOrDefault(c => string.Equals(c.Name, name.Trim(), StringComparison.CurrentCultureIgnoreCase))
            ?? throw Refusal.Of("NoSuchClass", name, classes.Count == 0 ? HostWords.Say("None") : string.Join(", ", classes.Select(c => c.Name)));
    }

    private static async Task<Lesson> LatestAsync(IReadOnlyList<Lesson> lessons, IStore store, bool isWritten, CancellationToken cancel)
    {
        if (isWritten)
        {
            foreach (var lesson in lessons.Reverse())
                if ((await store.ListEntriesAsync(lesson.SchoolId, lesson.Id, cancel)).Count > 0) return lesson;
        }
        return lessons[^1];
    }
}
