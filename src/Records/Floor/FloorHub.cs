using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Slantwise.Records.Checks;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Floor.Rooms;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Floor;

/// <summary>The lessons that are open for devices, one hub a program. What matters is in the store; what is only here is when a device last spoke.</summary>
public sealed class FloorHub : IAsyncDisposable
{
    /// <summary>How long a code joins devices, from when it was made.</summary>
    public static readonly TimeSpan CodeLasts = TimeSpan.FromMinutes(90);

    // Far more than it ever takes: each draw meets another lesson's code once in a hundred thousand times even in a school with thousands of lessons.
    private const int MostDraws = 20;

    private static readonly TimeSpan IdleFor = TimeSpan.FromMinutes(10);
    private static readonly TimeSpan SweepEvery = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan TellEvery = TimeSpan.FromSeconds(2);

    private readonly IStore _store;
    private readonly TimeProvider _clock;
    private readonly Func<int, int> _draw;
    private readonly string _appVersion;
    private readonly GroupCommit _commit;
    private readonly SideWork _side;
    private readonly ConcurrentDictionary<(Guid School, Guid Lesson), Lazy<Task<FloorRoom?>>> _rooms = [];
    private readonly SemaphoreSlim _opening = new(1, 1);
    private long _sweptAtTicks;

    /// <summary>A hub over a store.</summary>
    /// <param name="store">Where the records are.</param>
    /// <param name="clock">Dates what happens.</param>
    /// <param name="draw">A number from 0 to one less than its argument, that nobody can foresee: codes are made of such.</param>
    /// <param name="appVersion">The version of the floor's pages.</param>
    public FloorHub(IStore store, TimeProvider clock, Func<int, int> draw, string appVersion)
    {
        (_store, _clock, _draw, _appVersion) = (store, clock, draw, appVersion);
        (_commit, _side) = (new GroupCommit(store), new SideWork(clock));
    }

    /// <summary>Rooms in memory now.</summary>
    public int RoomCount => _rooms.Count;

    /// <summary>Opens a lesson, or opens it again. Its sheet is frozen if it was not, as printing does it; an open one stays as it is, but an expired code is renewed.</summary>
    /// <exception cref="FloorRefusal">No such lesson, or one without a sheet that could be used.</exception>
    public async Task<FloorLesson> OpenAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default)
    {
        await _opening.WaitAsync(cancel);
        try
        {
            await PrepareAsync(schoolId, lessonId, cancel);
            if (await RoomAsync(schoolId, lessonId) is { } room)
            {
                await room.ChangeLessonAsync(lesson => lesson with { ClosedAt = null }, cancel);
                return room.Lesson.CodeUntil <= _clock.GetUtcNow() ? await RenewAsync(room, cancel) : room.Lesson;
            }
            for (var draws = 1; ; draws++)
            {
                var now = _clock.GetUtcNow();
                var lesson = new FloorLesson { SchoolId = schoolId, LessonId = lessonId, Code = NewCode(), CodeUntil = now + CodeLasts, OpenedAt = now };
                try
                {
                    await _store.SaveFloorLessonAsync(lesson, cancel);
                    return lesson;
                }
                catch (ArgumentException) when (draws < MostDraws)
                {
                    // Another lesson of the school has this code.
                }
            }
        }
        finally
        {
            _opening.Release();
        }
    }

    /// <summary>How a lesson stands with its devices; none if it was never opened.</summary>
    public async Task<FloorSeen?> FindAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default) =>
        await RoomAsync(schoolId, lessonId).WaitAsync(cancel) is { } room ? new FloorSeen(room.Lesson, room.Devices) : null;

    /// <summary>How a lesson stands with its devices, at once and after each change; several changes may come as one. Nothing if it was never opened.</summary>
    public async IAsyncEnumerable<FloorSeen> WatchAsync(Guid schoolId, Guid lessonId, [EnumeratorCancellation] CancellationToken cancel = default)
    {
        if (await RoomAsync(schoolId, lessonId).WaitAsync(cancel) is not { } room) yield break;
        using var watch = room.Watch(deviceId: null, isTeachers: false);
        var told = (FloorSeen?)null;
        while (true)
        {
            // What nobody announces is that a device has spoken: it is looked at now and then.
            await watch.WaitAsync(TellEvery, cancel);
            var seen = new FloorSeen(room.Lesson, room.Devices);
            if (told is not null && told.Lesson == seen.Lesson && told.Devices.SequenceEqual(seen.Devices)) continue;
            yield return told = seen;
        }
    }

    /// <summary>Ends the lesson for devices, opens it again, stops, lets go on, counts down.</summary>
    /// <exception cref="FloorRefusal">It was never opened; a countdown out of range.</exception>
    public async Task<FloorLesson> OrderLessonAsync(Guid schoolId, Guid lessonId, LessonOrder order, CancellationToken cancel = default) =>
        await (await OpenedAsync(schoolId, lessonId)).OrderAsync(order, cancel);

    /// <summary>Ends the lesson for devices; what they have still to deliver is taken.</summary>
    /// <exception cref="FloorRefusal">It was never opened.</exception>
    public Task<FloorLesson> CloseAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default) =>
        OrderLessonAsync(schoolId, lessonId, new LessonOrder(IsClosed: true), cancel);

    /// <summary>Gives the lesson a new code; the old one joins nobody any more.</summary>
    /// <exception cref="FloorRefusal">It was never opened, or has ended.</exception>
    public async Task<FloorLesson> RenewCodeAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default) =>
        await RenewAsync(await OpenedAsync(schoolId, lessonId), cancel);

    /// <summary>Locks, unlocks, names or frees a device.</summary>
    /// <returns>All devices, after it.</returns>
    /// <exception cref="FloorRefusal">No such lesson or device, or a name that is too long.</exception>
    public async Task<IReadOnlyList<DeviceSeen>> OrderDeviceAsync(
        Guid schoolId, Guid lessonId, string deviceId, DeviceOrder order, CancellationToken cancel = default) =>
        await (await OpenedAsync(schoolId, lessonId)).OrderAsync(deviceId, order, cancel);

    /// <summary>A device joins by the code on the wall.</summary>
    /// <param name="schoolId">The school whose codes count.</param>
    /// <param name="request">What it asks. Spaces, hyphens and small letters in the code do not matter.</param>
    /// <param name="cancel">Gives up.</param>
    /// <exception cref="FloorRefusal">No lesson has the code, it has run out, the lesson has ended or is full; a teacher or board without a ticket; an id that joined as something else.</exception>
    public async Task<FloorMember> JoinByCodeAsync(Guid schoolId, JoinRequest request, CancellationToken cancel = default)
    {
        var code = new string([.. (request.Code ?? "").Where(char.IsLetterOrDigit).Select(char.ToUpperInvariant)]);
        if (code.Length != JoinCode.Length || await _store.FindFloorLessonByCodeAsync(schoolId, code, cancel) is not { } lesson)
            throw new FloorRefusal(FloorProblemKind.CodeUnknown);
        if (lesson.ClosedAt is not null) throw new FloorRefusal(FloorProblemKind.LessonClosed);
        if (lesson.CodeUntil <= _clock.GetUtcNow()) throw new FloorRefusal(FloorProblemKind.CodeExpired);
        if (request.Kind is FloorDeviceKind.Teacher or FloorDeviceKind.Board) throw new FloorRefusal(FloorProblemKind.NotAllowed);
        return await JoinAsync(schoolId, lesson.LessonId, request, cancel);
    }

    /// <summary>A device joins by a ticket, which the caller has read and found good.</summary>
    /// <exception cref="FloorRefusal">The lesson was never opened, has ended or is full; an id that joined as something else.</exception>
    public async Task<FloorMember> JoinAsync(Guid schoolId, Guid lessonId, JoinRequest request, CancellationToken cancel = default)
    {
        var room = await OpenedAsync(schoolId, lessonId);
        var device = await room.JoinAsync(request, cancel);
        room.See(device.DeviceId, null);
        return new FloorMember(room, device.DeviceId);
    }

    /// <summary>A device that joined before and shows a token, which the caller has read and found good.</summary>
    /// <exception cref="FloorRefusal">The lesson or the device is no longer here.</exception>
    public async Task<FloorMember> MemberAsync(Guid schoolId, Guid lessonId, string deviceId)
    {
        if (await RoomAsync(schoolId, lessonId) is not { } room || room.FindDevice(deviceId) is null) throw new FloorRefusal(FloorProblemKind.TokenInvalid);
        return new FloorMember(room, deviceId);
    }

    /// <summary>Gives the lesson of a teacher's device a new code.</summary>
    /// <exception cref="FloorRefusal">Not a teacher's device, or a locked one; the lesson has ended.</exception>
    public async Task<FloorLesson> RenewCodeAsync(FloorMember teacher, CancellationToken cancel = default)
    {
        teacher.RequireTeacher();
        return await RenewCodeAsync(teacher.Of.SchoolId, teacher.Of.LessonId, cancel);
    }

    /// <summary>Writes what waits and takes no more.</summary>
    public ValueTask DisposeAsync() => _commit.DisposeAsync();

    private async Task<FloorRoom> OpenedAsync(Guid schoolId, Guid lessonId) =>
        await RoomAsync(schoolId, lessonId) ?? throw new FloorRefusal(FloorProblemKind.LessonClosed);

    private async Task<FloorLesson> RenewAsync(FloorRoom room, CancellationToken cancel)
    {
        for (var draws = 1; ; draws++)
        {
            try
            {
                return await room.ChangeLessonAsync(
                    lesson => lesson.ClosedAt is not null
                        ? throw new FloorRefusal(FloorProblemKind.LessonClosed)
                        : lesson with { Code = NewCode(), CodeUntil = _clock.GetUtcNow() + CodeLasts },
                    cancel);
            }
            catch (ArgumentException) when (draws < MostDraws)
            {
                // Another lesson of the school has this code.
            }
        }
    }

    private string NewCode() => string.Create(JoinCode.Length, _draw, (code, draw) =>
    {
        for (var i = 0; i < code.Length; i++) code[i] = JoinCode.Alphabet[draw(JoinCode.Alphabet.Length)];
    });

    // What is on the screens must be what the results are read against.
    private async Task PrepareAsync(Guid schoolId, Guid lessonId, CancellationToken cancel)
    {
        if (await _store.FindLessonAsync(schoolId, lessonId, cancel) is not { } lesson) throw new FloorRefusal(FloorProblemKind.LessonWithoutSheet);
        if (lesson.SheetVersion is not null) return;
        if (lesson.SheetId is not { } sheetId || await _store.FindSheetAsync(schoolId, sheetId, cancel) is not { } sheet
            || await _store.FindSchoolAsync(schoolId, cancel) is not { } school || SheetCheck.Of(sheet.Draft, school.Policy).Any(f => f.IsRefused))
        {
            throw new FloorRefusal(FloorProblemKind.LessonWithoutSheet);
        }
        var version = await _store.FreezeSheetAsync(schoolId, sheetId, cancel);
        await _store.SaveLessonAsync(lesson with { SheetVersion = version.Version }, cancel);
    }

    private async Task<FloorRoom?> RoomAsync(Guid schoolId, Guid lessonId)
    {
        Sweep();
        var loading = _rooms.GetOrAdd((schoolId, lessonId), key => new(() => FloorRoom.LoadAsync(_store, _clock, _commit, _side, _appVersion, key.School, key.Lesson)));
        var isKept = false;
        try
        {
            var room = await loading.Value;
            room?.Use();
            isKept = room is not null;
            return room;
        }
        finally
        {
            // A lesson that was not open, or a store that failed, is asked for again.
            if (!isKept) _rooms.TryRemove(new((schoolId, lessonId), loading));
        }
    }

    private void Sweep()
    {
        var (now, before) = (_clock.GetUtcNow().UtcTicks, Interlocked.Read(ref _sweptAtTicks));
        if (now - before < SweepEvery.Ticks || Interlocked.CompareExchange(ref _sweptAtTicks, now, before) != before) return;
        foreach (var pair in _rooms)
        {
            if (pair.Value is { IsValueCreated: true, Value: { IsCompletedSuccessfully: true, Result: { } room } } && room.IsIdle(IdleFor)) _rooms.TryRemove(pair);
        }
    }
}
