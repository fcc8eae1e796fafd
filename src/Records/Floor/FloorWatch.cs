using System.Globalization;
using System.Threading.Channels;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Floor.Rooms;

namespace Slantwise.Records.Floor;

/// <summary>One listener to a lesson. It remembers what it was told, and what is new is put together when it asks: a slow one misses nothing, holds nobody up and fills no memory.</summary>
public sealed class FloorWatch : IDisposable
{
    /// <summary>Entries told at once, at most; the next ones come with the next question.</summary>
    private const int MostEntryCount = 200;

    // That a device has spoken is worth a line, but not each time.
    private static readonly TimeSpan SeenEvery = TimeSpan.FromSeconds(2);

    private readonly FloorRoom _room;
    private readonly Channel<bool> _signal = Channel.CreateBounded<bool>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropWrite });
    private readonly string? _deviceId;
    private Task<bool>? _waiting;
    private (long Lesson, long Device) _told = (-1, -1);
    private (long Devices, long Seen) _toldDevices = (-1, -1);
    private long _toldQuestions = -1;
    private long _toldLog = -1;
    private int _toldEntryCount;
    private DateTimeOffset _devicesToldAt;

    internal FloorWatch(FloorRoom room, string? deviceId)
    {
        (_room, _deviceId) = (room, deviceId);
        _signal.Writer.TryWrite(true);
    }

    /// <summary>Whether it wants to hear about entries and questions, which cost the program work.</summary>
    public bool IsTeachers { get; internal init; }

    /// <summary>The device that listens; none for the desk.</summary>
    internal string? DeviceId => _deviceId;

    /// <summary>Waits until something may be new, or long enough.</summary>
    /// <param name="most">How long at most.</param>
    /// <param name="cancel">Gives up.</param>
    /// <returns>Whether something may be new.</returns>
    /// <exception cref="OperationCanceledException">It was given up.</exception>
    public async Task<bool> WaitAsync(TimeSpan most, CancellationToken cancel)
    {
        _waiting ??= _signal.Reader.WaitToReadAsync(CancellationToken.None).AsTask();
        using var over = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        var first = await Task.WhenAny(_waiting, Task.Delay(most, _room.Clock, over.Token));
        await over.CancelAsync();
        cancel.ThrowIfCancellationRequested();
        if (first != _waiting) return false;
        _waiting = null;
        while (_signal.Reader.TryRead(out _)) continue;
        return true;
    }

    /// <summary>What is new since the last time; everything the first time.</summary>
    /// <param name="language">The language of the questions.</param>
    public FloorNews Take(CultureInfo language)
    {
        var now = _room.Clock.GetUtcNow();
        var view = _room.Look(_deviceId, IsTeachers ? _toldLog : null, _toldEntryCount, MostEntryCount);
        var state = view.State is not null && _told != view.StateVersion ? view.State : null;
        _told = view.StateVersion;
        if (!IsTeachers || view.State is { IsLocked: true }) return new(state, null);

        var isDevicesNew = _toldDevices.Devices != view.DevicesVersion.Devices
            || (_toldDevices.Seen != view.DevicesVersion.Seen && now - _devicesToldAt >= SeenEvery);
        var isQuestionsNew = _toldQuestions != view.QuestionsVersion;
        if (isDevicesNew) (_toldDevices, _devicesToldAt) = (view.DevicesVersion, now);
        (_toldQuestions, _toldLog, _toldEntryCount) = (view.QuestionsVersion, view.LogVersion, view.EntryCount);
        // What is left over is looked at again after a moment.
        if (view.HasMoreEntries) Wake();
        if (!isDevicesNew && !isQuestionsNew && view.Entries.Count == 0) return new(state, null);
        return new(state, new TeacherNews(
            view.Entries,
            isDevicesNew ? view.Devices : null,
            isQuestionsNew ? [.. view.Questions.Select(q => new LiveQuestion(q.PupilId, q.IsSafety, q.Question(language), q.Reason(language)))] : null));
    }

    /// <summary>Stops listening.</summary>
    public void Dispose() => _room.Leave(this);

    internal void Wake() => _signal.Writer.TryWrite(true);
}
