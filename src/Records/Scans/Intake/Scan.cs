using System.Text.Json.Serialization;

namespace Slantwise.Records.Scans.Intake;

/// <summary>A form that was read: whose it is, what its marks say, what a person said to it.</summary>
public sealed record Scan
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>The scan's id within the school.</summary>
    public required Guid Id { get; init; }

    /// <summary>The file it came from, its name without a folder.</summary>
    public required string File { get; init; }

    /// <summary>The page of the file, from 1.</summary>
    public required int FilePage { get; init; }

    /// <summary>The form on that page, from 1: two sheets may lie on one picture.</summary>
    public required int FormNumber { get; init; }

    /// <summary>A tag of the picture's bytes.</summary>
    public required long PictureTag { get; init; }

    /// <summary>When it was read, UTC.</summary>
    public required DateTimeOffset ReadAt { get; init; }

    /// <summary>Whether somebody still has to look.</summary>
    public ScanState State { get; init; } = ScanState.Waiting;

    /// <summary>What became of its code.</summary>
    public CodeFound CodeFound { get; init; }

    /// <summary>The lesson; none where the code was not read and it cannot be told.</summary>
    public Guid? LessonId { get; init; }

    /// <summary>The pupil; none while nobody has said who, and on an observation sheet.</summary>
    public Guid? PupilId { get; init; }

    /// <summary>The pupil's tag in its code, or the number of a sheet without a name; none where the code was not read. Whoever is named afterwards, the page stays the same.</summary>
    public long? PupilTag { get; init; }

    /// <summary>The sheet's version it was printed from; none where that is not known.</summary>
    public int? SheetVersion { get; init; }

    /// <summary>The page of the pupil's sheet, from 1; none where that is not known.</summary>
    public int? SheetPage { get; init; }

    /// <summary>The number of a sheet without a name; none for any other.</summary>
    public int? SpareNumber { get; init; }

    /// <summary>Whether it is the teacher's observation sheet.</summary>
    public bool IsObservation { get; init; }

    /// <summary>The pupils of an observation sheet's rows, in their order. Empty for any other sheet.</summary>
    public IReadOnlyList<Guid> RowPupils { get; init; } = [];

    /// <summary>The form it was read as; none where that is not known.</summary>
    public long? LayoutTag { get; init; }

    /// <summary>What there is to say about the page as a whole.</summary>
    public IReadOnlyList<ScanRemark> Remarks { get; init; } = [];

    /// <summary>What it says, an item a question. Empty where the page could not be trusted.</summary>
    public IReadOnlyList<ScanItem> Items { get; init; } = [];

    /// <summary>The keys of its written fields: words kept as pictures.</summary>
    public IReadOnlyList<string> Writings { get; init; } = [];

    /// <summary>Whether a person has said that its marks are to be taken although the pupil is marked absent.</summary>
    public bool IsConfirmed { get; init; }

    /// <summary>The items somebody has to look at and has not.</summary>
    [JsonIgnore]
    public IEnumerable<ScanItem> Waiting => Items.Where(i => i.IsWaiting);

    /// <summary>Whether something about the page as a whole keeps every entry of it back.</summary>
    [JsonIgnore]
    public bool IsHeld => Remarks.Any(r => r.Kind switch
    {
        ScanRemarkKind.NoCode or ScanRemarkKind.SpareSheet => PupilId is null,
        ScanRemarkKind.MarkedAbsent => !IsConfirmed,
        ScanRemarkKind.NotInClass or ScanRemarkKind.NoSheet or ScanRemarkKind.RowsUnknown => true,
        _ => IsFault(r.Kind),
    });

    /// <summary>Whether its marks could not be trusted at all: photograph it again.</summary>
    [JsonIgnore]
    public bool IsFaulty => Remarks.Any(r => IsFault(r.Kind));

    private static bool IsFault(ScanRemarkKind kind) => kind is ScanRemarkKind.FormNotFound or ScanRemarkKind.FormTooSmall
        or ScanRemarkKind.FormBlurred or ScanRemarkKind.FormBadLight or ScanRemarkKind.FormCutOff or ScanRemarkKind.LayoutUnknown;

    /// <summary>Whether a scan is of the same page of the same sheet, or of the same picture where that cannot be told.</summary>
    /// <param name="other">Another scan of the school.</param>
    public bool IsSamePage(Scan other)
    {
        if (CodeFound != CodeFound.Read || other.CodeFound != CodeFound.Read)
            return CodeFound == other.CodeFound && PictureTag == other.PictureTag && FormNumber == other.FormNumber;
        // Printed again in another way, with other rows for one, it is another page.
        return (LessonId, PupilTag, SpareNumber, LayoutTag, SheetVersion, SheetPage)
            == (other.LessonId, other.PupilTag, other.SpareNumber, other.LayoutTag, other.SheetVersion, other.SheetPage);
    }
}
