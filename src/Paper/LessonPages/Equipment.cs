using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;
using Slantwise.Records.Tasks;

namespace Slantwise.Paper.LessonPages;

/// <summary>What has to be there, as far as the plan and the levels' doses say.</summary>
internal static class Equipment
{
    public static IEnumerable<string> Of(LessonRecord record, CardWords words)
    {
        yield return record.Lesson.MatCount is { } mats ? words.Count("Mats", mats) : words["MatsUnknown"];
        yield return words.Count("Pencils", record.Pupils.Count);
        var doses = record.Sheet!.Content.Tasks.SelectMany(t => OfferedLevel.Of(t, record, null)).Select(l => l.Level.Dose.Kind).ToHashSet();
        if (doses.Contains(DoseKind.HoldS)) yield return words["Clock"];
        if (doses.Contains(DoseKind.DistanceM)) yield return words["Distances"];
        if (doses.Contains(DoseKind.HeightM)) yield return words["Heights"];
        if (doses.Contains(DoseKind.TargetSizeM)) yield return words["Targets"];
    }
}
