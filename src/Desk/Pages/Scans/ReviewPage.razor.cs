using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Slantwise.Desk.Progress;
using Slantwise.Desk.Words;
using Slantwise.Records.Lessons;

namespace Slantwise.Desk.Pages.Scans;

/// <summary>One box at a time: the picture, what it seems to say, and an answer by one key.</summary>
public partial class ReviewPage
{
    private LessonRecord? _record;
    private ReviewSession? _session;
    private string _lead = "";
    private string? _failure;
    private string? _finding;
    private string _typed = "";
    private bool _isRow;
    private int _pageCount;
    private int _pupilCount;
    private int _shownTurn;
    private IJSObjectReference? _keys;

    /// <summary>The lesson.</summary>
    [Parameter]
    public Guid LessonId { get; set; }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        try
        {
            if (_keys is not null) await _keys.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and its script with it.
        }
    }

    /// <inheritdoc />
    protected override async Task LoadAsync()
    {
        _record = await LessonRecord.LoadAsync(Desk.Store, Desk.SchoolId, LessonId);
        if (_record is null) return;
        _lead = ScanPageWords.Say("LessonOnDay", _record.Class.Name, LessonName.Of(_record.Lesson), LessonName.Day(_record.Lesson.Date, Desk.Today));
        _session = await ReviewSession.LoadAsync(Desk.Store, _record, Desk.Clock);
        var pile = PileOverview.Of(_record, await Desk.Store.ListScansAsync(Desk.SchoolId, LessonId));
        (_pageCount, _pupilCount) = (pile.PageCount, pile.PupilCount);
        Fill();
    }

    /// <inheritdoc />
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (_session is null) return;
        if (_keys is null)
        {
            _keys = await Js.InvokeAsync<IJSObjectReference>("import", "/" + Assets["_content/Slantwise.Desk/scans.js"]);
            _shownTurn = _session.Turn;
            await _keys.InvokeVoidAsync("attachReview", "review");
        }
        if (_shownTurn == _session.Turn) return;
        _shownTurn = _session.Turn;
        await _keys.InvokeVoidAsync("showCard", "review");
    }

    private async Task AnswerAsync(ReviewCard card, decimal? value)
    {
        var answering = _session!.AnswerAsync(card, value);
        await FollowAsync(answering);
    }

    private Task TypeAsync()
    {
        if (_session!.Current is not { } card) return Task.CompletedTask;
        if (ReviewText.TrySeconds(_typed, out var seconds)) return AnswerAsync(card, seconds);
        _finding = ScanPageWords.Say("SecondsWrong");
        _session.Repeat();
        return Task.CompletedTask;
    }

    private Task LeaveSecondsAsync() => FollowAsync(_session!.SkipSecondsAsync());

    private Task UndoAsync() => FollowAsync(_session!.UndoAsync());

    private void Move(int step)
    {
        _session!.Move(step);
        Fill();
    }

    private async Task FollowAsync(Task storing)
    {
        Fill();
        var failure = await Desk.TryAsync(() => storing);
        _failure = failure;
        if (failure is not null) Fill();
    }

    private void Fill()
    {
        _finding = null;
        _typed = _session?.Current is { IsSeconds: true, Answer: { } seconds } ? seconds.ToString(System.Globalization.CultureInfo.CurrentCulture) : "";
    }
}
