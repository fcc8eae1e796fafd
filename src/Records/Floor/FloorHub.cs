using Slantwise.Records.Floor.Contracts;

namespace Slantwise.Records.Floor;

/// <summary>The lessons that are open for devices, one hub a program. What matters is in the store; what is only here is when a device last spoke.</summary>
public sealed class FloorHub : IAsyncDisposable
{
    /// <summary>How long a code joins devices, from when it was made.</summary>
    public static readonly TimeSpan CodeLasts = TimeSpan.FromMinutes(90);

    /// <summary>A hub over a store.</summary>
    /// <param name="store">Where the records are.</param>
    /// <param name="clock">Dates what happens.</param>
    /// <param name="draw">A number from 0 to one less than its argument, that nobody can foresee: codes are made of such.</param>
    /// <param name="appVersion">The version of the floor's pages.</param>
    public FloorHub(IStore store, TimeProvider clock, Func<int, int> draw, string appVersion) => _ = (store, clock, draw, appVersion);

    /// <summary>Opens a lesson, or opens it again. Its sheet is frozen if it was not, as printing does it; an open one stays as it is, but an expired code is renewed.</summary>
    /// <exception cref="FloorRefusal">No such lesson, or one without a sheet that could be used.</exception>
    public Task<FloorLesson> OpenAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default) => Later<FloorLesson>();

    /// <summary>How a lesson stands with its devices; none if it was never opened.</summary>
    public Task<FloorSeen?> FindAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default) => Later<FloorSeen?>();

    /// <summary>How a lesson stands with its devices, at once and after each change; several changes may come as one. Nothing if it was never opened.</summary>
    public IAsyncEnumerable<FloorSeen> WatchAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default) => AsyncEnumerable.Empty<FloorSeen>();

    /// <summary>Ends the lesson for devices, opens it again, stops, lets go on, counts down.</summary>
    /// <exception cref="FloorRefusal">It was never opened.</exception>
    public Task<FloorLesson> OrderLessonAsync(Guid schoolId, Guid lessonId, LessonOrder order, CancellationToken cancel = default) => Later<FloorLesson>();

    /// <summary>Ends the lesson for devices; what they have still to deliver is taken.</summary>
    /// <exception cref="FloorRefusal">It was never opened.</exception>
    public Task<FloorLesson> CloseAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default) =>
        OrderLessonAsync(schoolId, lessonId, new LessonOrder(IsClosed: true), cancel);

    /// <summary>Gives the lesson a new code; the old one joins nobody any more.</summary>
    /// <exception cref="FloorRefusal">It was never opened, or has ended.</exception>
    public Task<FloorLesson> RenewCodeAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default) => Later<FloorLesson>();

    /// <summary>Locks, unlocks, names or frees a device.</summary>
    /// <returns>All devices, after it.</returns>
    /// <exception cref="FloorRefusal">No such lesson or device, or a name that is too long.</exception>
    public Task<IReadOnlyList<DeviceSeen>> OrderDeviceAsync(Guid schoolId, Guid lessonId, string deviceId, DeviceOrder order, CancellationToken cancel = default) => Later<IReadOnlyList<DeviceSeen>>();

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => ValueTask.CompletedTask;

    /// <summary>What is not there yet.</summary>
    /// <exception cref="NotImplementedException">Always, for now.</exception>
    private static Task<T> Later<T>() => throw new NotImplementedException();
}
