using CsCheck;
using Slantwise.Desk.Pages.Halls;
using Slantwise.Engines.Planning.Space;
using Slantwise.Records.Halls;

namespace Slantwise.Surface.Tests.Desk.Halls;

public sealed class SpaceSessionTests
{
    private static readonly SchoolHall Hall = new() { SchoolId = Guid.Empty, Id = new Guid(1, 0, 0, new byte[8]), Name = "Hall", WidthM = 20, DepthM = 12.25 };

    private static SpaceSession Session(params LaidMat[] mats) => new(Hall, new() { MatLengthM = 2, MatWidthM = 1, ClearM = 1, WallClearM = 1, Mats = mats });

    [Theory]
    [InlineData(4.26, 3.04, 4.3, 3.0)]
    [InlineData(-3, 40, 0, 12.25)]
    public void Move_Anywhere_SnapsToTenCentimetresInsideTheWalls(double xM, double yM, double expectedXM, double expectedYM)
    {
        var session = Session(new LaidMat(5, 5, false, 0, null));
        session.Move(0, xM, yM);
        Assert.Equal((expectedXM, expectedYM), (session.Layout.Mats[0].XM, session.Layout.Mats[0].YM));
    }

    [Fact]
    public void Undo_AnyRunOfSteps_ComesBackToEachLayoutBefore() =>
        Gen.Select(Gen.Int[0, 5], Gen.Int[-1, 4], Gen.Double[-2, 22], Gen.Double[-2, 14]).Array[1, 20].Sample(steps =>
        {
            var session = Session(new LaidMat(5, 5, false, 0, null), new LaidMat(9, 5, false, 0, null));
            var before = new Stack<HallLayout>();
            foreach (var (what, mat, x, y) in steps)
            {
                var was = session.Layout;
                switch (what)
                {
                    case 0: session.Move(mat, x, y); break;
                    case 1: session.Turn(mat); break;
                    case 2: session.Remove(mat); break;
                    case 3: session.Add(); break;
                    case 4: session.Stand(x, y); break;
                    default: session.Give(mat, 1); break;
                }
                if (session.Layout != was) before.Push(was);
            }
            while (session.CanUndo)
            {
                session.Undo();
                Assert.Same(before.Pop(), session.Layout);
            }
            Assert.Empty(before);
        }, iter: 40);

    [Fact]
    public void Add_WhereThereIsRoom_ClashesWithNothing()
    {
        var session = Session();
        for (var i = 0; i < 12; i++) Assert.True(session.Add());
        Assert.Empty(LayoutClashes.Of(Hall.OnFloor(), session.Layout.Need(), session.Layout.Placed()));
    }

    [Fact]
    public void Add_WhereThereIsNone_LiesInTheMiddleAndSaysSo()
    {
        var session = new SpaceSession(Hall with { WidthM = 3, DepthM = 3 }, Session().Layout);
        Assert.False(session.Add());
        Assert.Equal((1.5, 1.5), (session.Layout.Mats[0].XM, session.Layout.Mats[0].YM));
    }

    [Fact]
    public void Give_AMatToAStation_TakesTheCircleOfItsTask()
    {
        var (one, two) = (new Guid(1, 0, 0, new byte[8]), new Guid(2, 0, 0, new byte[8]));
        var session = Session(new LaidMat(5, 5, false, 0, null));
        session.TakeFalls([new(one, "one", 1.5, FallGround.Posture, 1), new(two, "two", 0.8, FallGround.ClearSpace, null)], isNew: false);
        session.Change(l => l with { Stations = [new("a", one), new("b", two)] });
        session.Give(0, 2);
        Assert.Equal((2, 0.8), (session.Layout.Mats[0].Station!.Value, session.Layout.Mats[0].FallM));
        session.Give(0, null);
        Assert.Equal(1.5, session.Layout.Mats[0].FallM);
    }

    [Fact]
    public void Enter_AnotherHall_IsUndoneWithTheHall()
    {
        var session = Session(new LaidMat(5, 5, false, 0, null));
        session.Enter(Hall with { Id = new Guid(2, 0, 0, new byte[8]), WidthM = 10 });
        session.Move(0, 15, 5);
        Assert.Equal(10, session.Layout.Mats[0].XM);
        session.Undo();
        session.Undo();
        Assert.Equal((20, 5), (session.Hall.WidthM, session.Layout.Mats[0].XM));
    }
}
