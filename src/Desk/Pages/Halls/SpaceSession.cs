using Slantwise.Engines.Planning.Space;
using Slantwise.Records.Halls;

namespace Slantwise.Desk.Pages.Halls;

/// <summary>A sitting over a lesson's hall: what lies where, and the steps back.</summary>
/// <param name="hall">The hall to begin with.</param>
/// <param name="layout">The layout to begin with.</param>
public sealed class SpaceSession(SchoolHall hall, HallLayout layout)
{
    /// <summary>What a drag and an arrow snap to.</summary>
    public const double StepM = 0.1;

    private const int MostSteps = 200;
    private readonly LinkedList<(SchoolHall Hall, HallLayout Layout)> _before = [];

    /// <summary>The hall.</summary>
    public SchoolHall Hall { get; private set; } = hall;

    /// <summary>What lies where.</summary>
    public HallLayout Layout { get; private set; } = layout;

    /// <summary>The circles of the lesson's tasks.</summary>
    public IReadOnlyList<TaskFall> Falls { get; private set; } = [];

    /// <summary>Whether there is a step to take back.</summary>
    public bool CanUndo => _before.Count > 0;

    /// <summary>Goes on with other circles, as when the class's age was said; mats take them over.</summary>
    /// <param name="falls">The tasks' circles.</param>
    /// <param name="isNew">Whether mats take them over; not when the page only opens.</param>
    public void TakeFalls(IReadOnlyList<TaskFall> falls, bool isNew)
    {
        Falls = falls;
        // Part of the step that said the age.
        if (isNew) Layout = SpaceProposal.WithFalls(Layout, falls);
    }

    /// <summary>Another hall; what lies in it stays where it is.</summary>
    /// <param name="hall">The hall.</param>
    public void Enter(SchoolHall hall)
    {
        if (hall.Id == Hall.Id) return;
        Keep();
        Hall = hall;
    }

    /// <summary>Any change of the layout, as one step.</summary>
    /// <param name="change">The layout after it, from the layout before.</param>
    public void Change(Func<HallLayout, HallLayout> change)
    {
        var after = change(Layout);
        if (after == Layout) return;
        Keep();
        Layout = after;
    }

    /// <summary>Moves a mat's middle; it stays inside of the walls.</summary>
    /// <param name="mat">The mat, from 0. One that is not there moves nothing.</param>
    /// <param name="xM">From the left wall.</param>
    /// <param name="yM">From the front wall.</param>
    public void Move(int mat, double xM, double yM) => Change(mat, m => m with { XM = Inside(xM, Hall.WidthM), YM = Inside(yM, Hall.DepthM) });

    /// <summary>Turns a mat by a quarter.</summary>
    /// <param name="mat">The mat, from 0. One that is not there turns nothing.</param>
    public void Turn(int mat) => Change(mat, m => m with { IsTurned = !m.IsTurned });

    /// <summary>Changes one mat.</summary>
    /// <param name="mat">The mat, from 0. One that is not there changes nothing.</param>
    /// <param name="change">The mat after it, from the mat before.</param>
    public void Change(int mat, Func<LaidMat, LaidMat> change)
    {
        if (mat < 0 || mat >= Layout.Mats.Count || change(Layout.Mats[mat]) is var after && after == Layout.Mats[mat]) return;
        Change(l => l with { Mats = [.. l.Mats.Select((m, i) => i == mat ? after : m)] });
    }

    /// <summary>Gives a mat to a station, and with it the circle of what is done there.</summary>
    /// <param name="mat">The mat, from 0.</param>
    /// <param name="station">The station, from 1; none for no station.</param>
    public void Give(int mat, int? station) => Change(mat, m => m with
    {
        Station = station, FallM = Falls.Count == 0 ? m.FallM : SpaceProposal.FallM(Layout, station, Falls),
    });

    /// <summary>Takes a mat away.</summary>
    /// <param name="mat">The mat, from 0. One that is not there takes nothing.</param>
    public void Remove(int mat)
    {
        if (mat >= 0 && mat < Layout.Mats.Count) Change(l => l with { Mats = [.. l.Mats.Where((_, i) => i != mat)] });
    }

    /// <summary>Adds a mat at the first place from the front left where nothing is too near; in the middle where there is none.</summary>
    /// <returns>Whether it found such a place.</returns>
    public bool Add()
    {
        if (Layout.Mats.Count >= SpaceProposal.MostMats) return false;
        var (floor, need, there) = (Hall.OnFloor(), Layout.Need(), Layout.Placed());
        var clashCount = LayoutClashes.Of(floor, need, there).Count;
        var fallM = SpaceProposal.FallM(Layout, null, Falls);
        var free = Places().FirstOrDefault(m => LayoutClashes.Of(floor, need, [.. there, new(new(m.XM, m.YM), m.IsTurned, m.FallM)]).Count == clashCount);
        var mat = free ?? new LaidMat(Inside(Hall.WidthM / 2, Hall.WidthM), Inside(Hall.DepthM / 2, Hall.DepthM), false, fallM, null);
        Change(l => l with { Mats = [.. l.Mats, mat] });
        return free is not null;

        IEnumerable<LaidMat> Places()
        {
            foreach (var isTurned in new[] { false, true })
                for (var y = 0.5; y < Hall.DepthM; y += 0.5)
                    for (var x = 0.5; x < Hall.WidthM; x += 0.5)
                        yield return new(x, y, isTurned, fallM, null);
        }
    }

    /// <summary>Puts the teacher somewhere, inside of the walls.</summary>
    /// <param name="xM">From the left wall.</param>
    /// <param name="yM">From the front wall.</param>
    public void Stand(double xM, double yM) => Change(l => l with { TeacherXM = Inside(xM, Hall.WidthM), TeacherYM = Inside(yM, Hall.DepthM) });

    /// <summary>Puts the teacher where most is seen; where nowhere is free, by the front wall.</summary>
    public void StandBest()
    {
        var best = TeacherSight.Best(Hall.OnFloor(), Layout.Need(), Layout.Placed(), 1)?.Place ?? new(Hall.WidthM / 2, Math.Min(1, Hall.DepthM));
        Change(l => l with { TeacherXM = best.XM, TeacherYM = best.YM });
    }

    /// <summary>Lays out mats anew.</summary>
    /// <param name="count">How many, 0 to 100.</param>
    public void LayOut(int count) => Change(l => SpaceProposal.LaidOut(Hall, l, count, Falls));

    /// <summary>Takes the last step back.</summary>
    public void Undo()
    {
        if (_before.Last is not { } last) return;
        (Hall, Layout) = last.Value;
        _before.RemoveLast();
    }

    private void Keep()
    {
        _before.AddLast((Hall, Layout));
        if (_before.Count > MostSteps) _before.RemoveFirst();
    }

    // Whole steps, and not beyond a wall that is no whole step away.
    private static double Inside(double atM, double sideM) => Math.Clamp(Math.Round(atM / StepM, MidpointRounding.AwayFromZero) / Math.Round(1 / StepM), 0, sideM);
}
