using Slantwise.Desk.Words;
using Slantwise.Records;
using Slantwise.Records.Lessons;
using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Intake;
using Slantwise.Records.Sheets;

namespace Slantwise.Desk.Pages.Scans;

/// <summary>A teacher looking at a lesson's boxes one by one. The next is there at once; answers are stored behind it, in the order given.</summary>
public sealed class ReviewSession
{
    private readonly IStore _store;
    private readonly LessonRecord _record;
    private readonly ScanReview _review;
    private readonly Dictionary<int, SheetContent?> _printed = [];
    private readonly List<ReviewCard> _cards = [];
    private readonly List<ReviewCard> _said = [];
    private readonly SemaphoreSlim _oneAtATime = new(1, 1);

    private ReviewSession(IStore store, LessonRecord record, TimeProvider clock) =>
        (_store, _record, _review) = (store, record, new ScanReview(store, record.School.Id, clock));

    /// <summary>Every box that was or is to be looked at; the same kinds together. Those that come up meanwhile stand at the end.</summary>
    public IReadOnlyList<ReviewCard> Cards => _cards;

    /// <summary>The card looked at; none where all are answered.</summary>
    public ReviewCard? Current { get; private set; }

    /// <summary>The current card's number, from 1.</summary>
    public int Place => Current is null ? _cards.Count : _cards.IndexOf(Current) + 1;

    /// <summary>Cards nobody has answered.</summary>
    public int OpenCount => _cards.Count(c => !c.IsAnswered);

    /// <summary>Whether something is being stored.</summary>
    public bool IsStoring => _cards.Any(c => c.OnItsWay is not null);

    /// <summary>Goes up whenever another card, or the same one anew, is shown: what was meant for the one before is not taken for this one.</summary>
    public int Turn { get; private set; } = 1;

    /// <summary>Whether an answer can be taken back.</summary>
    public bool CanUndo => _said.Count > 0;

    /// <summary>Cards to have the pictures of ready: the one before, the current one, and those that come.</summary>
    public IEnumerable<ReviewCard> Near => Current is null
        ? []
        : _cards.Skip(Math.Max(0, Place - 2)).Take(2).Concat(_cards.Skip(Place).Where(c => !c.IsAnswered).Take(3)).Distinct();

    /// <summary>Starts at the first box that waits.</summary>
    /// <param name="store">Where scans are.</param>
    /// <param name="record">The lesson.</param>
    /// <param name="clock">Dates answers.</param>
    public static async Task<ReviewSession> LoadAsync(IStore store, LessonRecord record, TimeProvider clock)
    {
        var session = new ReviewSession(store, record, clock);
        var cards = new List<ReviewCard>();
        foreach (var scan in await store.ListScansAsync(record.School.Id, record.Lesson.Id)) cards.AddRange(await session.CardsOfAsync(scan));
        session._cards.AddRange(cards
            .OrderBy(c => c.IsSeconds)
            .ThenByDescending(c => c.Item.Doubt == ScanDoubt.Differs)
            .ThenBy(c => c.Item.Question.Kind)
            .ThenBy(c => c.Item.Doubt)
            .ThenBy(c => c.Item.Question.TaskNumber)
            .ThenBy(c => c.Item.Question.SetNumber)
            .ThenBy(c => c.Item.Question.Number)
            .ThenBy(c => c.Who, StringComparer.CurrentCulture));
        session._said.AddRange(session._cards.Where(c => c.IsAnswered).OrderBy(c => c.Item.Answer!.AnsweredAt));
        session.Current = session._cards.Find(c => !c.IsAnswered);
        return session;
    }

    /// <summary>Answers a card and goes to the next open one at once.</summary>
    /// <param name="card">The card.</param>
    /// <param name="value">The value; none for "nothing there".</param>
    /// <returns>Done when it is stored. If that fails the card is open and current again.</returns>
    public Task AnswerAsync(ReviewCard card, decimal? value)
    {
        card.OnItsWay = (true, value);
        _said.Remove(card);
        _said.Add(card);
        Show(NextOpen(card));
        return StoreAsync(card, () => _review.AnswerAsync(card.Scan.Id, card.Item.Key, value), () => _said.Remove(card));
    }

    /// <summary>Takes the last answer back and goes to its card.</summary>
    /// <returns>Done when it is stored.</returns>
    public Task UndoAsync()
    {
        if (_said.Count == 0) return Task.CompletedTask;
        var card = _said[^1];
        _said.RemoveAt(_said.Count - 1);
        card.OnItsWay = (false, null);
        Show(card);
        return StoreAsync(card, () => _review.TakeBackAsync(card.Scan.Id, card.Item.Key), () => _said.Add(card));
    }

    /// <summary>Leaves all seconds by hand that nobody has typed: they are not asked for again.</summary>
    /// <returns>Done when it is stored.</returns>
    public async Task SkipSecondsAsync()
    {
        foreach (var card in _cards.Where(c => c is { IsSeconds: true, IsAnswered: false }).ToList()) await AnswerAsync(card, null);
    }

    /// <summary>Goes to another card, answered or not, without wrapping around.</summary>
    /// <param name="step">-1 for the one before, 1 for the one after.</param>
    public void Move(int step)
    {
        var place = (Current is null ? _cards.Count : _cards.IndexOf(Current)) + step;
        if (place < 0 || place > _cards.Count) return;
        Show(place == _cards.Count ? _cards.Find(c => !c.IsAnswered) : _cards[place]);
    }

    /// <summary>Shows the same card anew, as when what was typed cannot be taken.</summary>
    public void Repeat() => Show(Current);

    private void Show(ReviewCard? card)
    {
        Current = card;
        Turn++;
    }

    private ReviewCard? NextOpen(ReviewCard after)
    {
        var place = _cards.IndexOf(after);
        return _cards.Skip(place + 1).Concat(_cards.Take(place)).FirstOrDefault(c => !c.IsAnswered);
    }

    private async Task StoreAsync(ReviewCard card, Func<Task<ReviewedScan>> store, Action putBack)
    {
        var way = card.OnItsWay;
        await _oneAtATime.WaitAsync();
        var isStored = false;
        try
        {
            // Away from the page's own thread, so that the next card is drawn first.
            var reviewed = await Task.Run(store);
            Take(reviewed.Scan, await CardsOfAsync(reviewed.Scan));
            if (card.OnItsWay == way) card.OnItsWay = null;
            isStored = true;
        }
        finally
        {
            if (!isStored)
            {
                card.OnItsWay = null;
                putBack();
                Show(card);
            }
            _oneAtATime.Release();
        }
    }

    // An answer can raise another question on its page, such as a value typed before, and settle one.
    private void Take(Scan scan, IReadOnlyList<ReviewCard> now)
    {
        var byKey = now.ToDictionary(c => c.Key);
        foreach (var card in _cards.Where(c => c.Scan.Id == scan.Id).ToList())
        {
            if (byKey.Remove(card.Key, out var fresh)) card.Item = fresh.Item;
            else if (card != Current) _cards.Remove(card);
        }
        _cards.AddRange(byKey.Values);
        if (Current is null && byKey.Count > 0) Show(_cards.Find(c => !c.IsAnswered));
    }

    private async Task<IReadOnlyList<ReviewCard>> CardsOfAsync(Scan scan)
    {
        if (scan.State == ScanState.Discarded || scan.IsHeld || await PrintedAsync(scan) is not { } printed) return [];
        return [.. scan.Items.Where(i => i.Doubt != ScanDoubt.None).Select(i => new ReviewCard(scan, i, Who(scan, i.Question), printed))];
    }

    private async Task<SheetContent?> PrintedAsync(Scan scan)
    {
        if (_record.Lesson.SheetId is not { } sheetId || scan.SheetVersion is not { } version) return null;
        if (!_printed.TryGetValue(version, out var known))
            _printed[version] = known = (await _store.FindSheetVersionAsync(_record.School.Id, sheetId, version))?.Content;
        return known;
    }

    private string Who(Scan scan, SheetField question)
    {
        var row = question.SetNumber - 1;
        var pupilId = !scan.IsObservation ? scan.PupilId : row >= 0 && row < scan.RowPupils.Count ? scan.RowPupils[row] : null;
        return _record.Pupils.FirstOrDefault(p => p.Id == pupilId)?.Label ?? ScanPageWords.Say("PupilGone");
    }
}
