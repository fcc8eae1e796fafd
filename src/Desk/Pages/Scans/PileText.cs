using System.Globalization;
using Slantwise.Desk.Progress;
using Slantwise.Desk.Words;

namespace Slantwise.Desk.Pages.Scans;

/// <summary>Says what became of a page, in the reader's language.</summary>
public sealed class PileText
{
    private readonly Dictionary<Guid, string> _pupils;
    private readonly Dictionary<Guid, string> _lessons;

    private PileText(Dictionary<Guid, string> pupils, Dictionary<Guid, string> lessons) => (_pupils, _lessons) = (pupils, lessons);

    /// <summary>Loads the names.</summary>
    /// <param name="desk">The school, loaded.</param>
    /// <param name="cancel">Stops the loading.</param>
    public static async Task<PileText> LoadAsync(DeskSchool desk, CancellationToken cancel = default)
    {
        var classes = (await desk.Store.ListClassesAsync(desk.SchoolId, cancel)).ToDictionary(c => c.Id, c => c.Name);
        return new PileText(
            (await desk.Store.ListPupilsAsync(desk.SchoolId, cancel)).ToDictionary(p => p.Id, p => p.Label),
            (await desk.Store.ListLessonsAsync(desk.SchoolId, cancel)).ToDictionary(
                l => l.Id, l => ScanPageWords.Say("LessonOnDay", classes.GetValueOrDefault(l.ClassId, ""), LessonName.Of(l), LessonName.Day(l.Date, desk.Today))));
    }

    /// <summary>What a lesson is called; empty for one that is not here.</summary>
    /// <param name="lessonId">The lesson.</param>
    public string Lesson(Guid lessonId) => _lessons.GetValueOrDefault(lessonId, "");

    /// <summary>Which file, and which page of it where it is not the first.</summary>
    /// <param name="line">The line.</param>
    public static string Where(PileLine line) => line.FilePage == 1 ? line.File : ScanPageWords.Say("FilePage", line.File, line.FilePage);

    /// <summary>What became of it.</summary>
    /// <param name="line">The line.</param>
    public string Sentence(PileLine line)
    {
        var who = line.PupilId is { } pupilId ? _pupils.GetValueOrDefault(pupilId, ScanPageWords.Say("PupilGone")) : ScanPageWords.Say("NoName");
        var remarks = string.Join(' ', line.Remarks.Select(r => r.Sentence(CultureInfo.CurrentUICulture)));
        return line.Kind switch
        {
            PileLineKind.Taken when line.AddedCount == 0 && remarks.Length > 0 => $"{who}: {remarks}",
            PileLineKind.Taken => With(ScanPageWords.SayCount("LineTaken", line.AddedCount, who), remarks),
            PileLineKind.Asks => With(ScanPageWords.SayCount("LineAsks", line.WaitingCount, who), remarks),
            PileLineKind.Again => ScanPageWords.Say("LineAgain", who),
            PileLineKind.Held when line.PupilId is not null => $"{who}: {remarks}",
            _ => remarks,
        };
    }

    private static string With(string sentence, string remarks) => remarks.Length == 0 ? sentence : $"{sentence} {remarks}";
}
