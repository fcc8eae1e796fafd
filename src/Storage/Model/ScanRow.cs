using Slantwise.Records.Scans.Intake;

namespace Slantwise.Storage.Model;

/// <summary>A scan as a row: what is looked for as columns, the whole as JSON.</summary>
internal sealed class ScanRow
{
    public required Guid SchoolId { get; init; }
    public required Guid Id { get; init; }
    public Guid? LessonId { get; init; }
    public Guid? PupilId { get; init; }
    public required ScanState State { get; init; }
    public required DateTimeOffset ReadAt { get; init; }
    public required string Content { get; init; }

    public static ScanRow Of(Scan scan) => new()
    {
        SchoolId = scan.SchoolId,
        Id = scan.Id,
        LessonId = scan.LessonId,
        PupilId = scan.PupilId,
        State = scan.State,
        ReadAt = scan.ReadAt,
        Content = JsonText.Write(scan),
    };

    public static Scan ScanOf(ScanRow row) => JsonText.Read<Scan>(row.Content);
}
