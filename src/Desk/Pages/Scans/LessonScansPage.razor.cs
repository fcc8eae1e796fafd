using Microsoft.AspNetCore.Components;
using Slantwise.Desk.Progress;
using Slantwise.Desk.Words;
using Slantwise.Records.Lessons;
using Slantwise.Records.Scans.Intake;
using Slantwise.Records.Scans.Pictures;

namespace Slantwise.Desk.Pages.Scans;

/// <summary>The photographed sheets of a lesson: what became of each, what waits, who is missing.</summary>
public partial class LessonScansPage
{
    private LessonRecord? _record;
    private PileOverview? _pile;
    private PileText _text = null!;
    private IReadOnlyList<PileLine> _lines = [];
    private HashSet<Guid> _photos = [];
    private string _lead = "";
    private string? _failure;

    /// <summary>The lesson.</summary>
    [Parameter]
    public Guid LessonId { get; set; }

    [Inject]
    private PileShelf Piles { get; set; } = null!;

    [SupplyParameterFromQuery(Name = "pile")]
    private string? PileId { get; set; }

    [SupplyParameterFromForm]
    private Guid? ScanId { get; set; }

    [SupplyParameterFromForm]
    private string? PupilId { get; set; }

    [SupplyParameterFromForm]
    private string? What { get; set; }

    /// <inheritdoc />
    protected override async Task LoadAsync()
    {
        _record = await LessonRecord.LoadAsync(Desk.Store, Desk.SchoolId, LessonId);
        if (_record is null) return;
        _text = await PileText.LoadAsync(Desk);
        _lines = Guid.TryParse(PileId, out var pile) ? Piles.LinesOf(pile) : [];
        _lead = ScanPageWords.Say("LessonOnDay", _record.Class.Name, LessonName.Of(_record.Lesson), LessonName.Day(_record.Lesson.Date, Desk.Today));
        var scans = await Desk.Store.ListScansAsync(Desk.SchoolId, LessonId);
        _pile = PileOverview.Of(_record, scans);
        // While a page waits its photo is there; afterwards where the school kept photos when it was done.
        _photos = [.. scans.Where(s => s.State == ScanState.Waiting).Select(s => s.Id)];
        foreach (var scan in scans.Where(s => Desk.School.Pictures.KeepsPhotos && s.State == ScanState.Done))
        {
            if (await Desk.Store.FindScanPictureAsync(Desk.SchoolId, scan.Id, ScanPicture.Photo) is not null) _photos.Add(scan.Id);
        }
    }

    private async Task SayAsync()
    {
        if (ScanId is not { } scanId) return;
        var review = new ScanReview(Desk.Store, Desk.SchoolId, Desk.Clock);
        if (What == "assign" && !_record!.Pupils.Any(p => p.Id.ToString() == PupilId))
        {
            _failure = ScanPageWords.Say("PickFirst");
            return;
        }
        _failure = await Desk.TryAsync(() => What switch
        {
            "assign" => review.AssignAsync(scanId, Guid.Parse(PupilId!)),
            "confirm" => review.ConfirmAsync(scanId),
            _ => review.DiscardAsync(scanId),
        });
        if (_failure is null) Navigation.NavigateTo($"/lessons/{LessonId}/scans" + (PileId is null ? "" : $"?pile={PileId}"));
    }

    private string? LabelOf(Guid? pupilId) => _record!.Pupils.FirstOrDefault(p => p.Id == pupilId)?.Label;

    // Those that hold a page back stand with the page.
    private static bool Matters(ScanRemark remark) => remark.Kind is ScanRemarkKind.OldVersion or ScanRemarkKind.NothingMarked;
}
