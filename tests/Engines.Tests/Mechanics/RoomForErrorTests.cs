using CsCheck;
using Slantwise.Engines.Mechanics;

namespace Slantwise.Engines.Tests.Mechanics;

public sealed class RoomForErrorTests
{
    private static readonly Contact[] Feet = [new(ContactPart.Foot, Side.Left), new(ContactPart.Foot, Side.Right)];

    [Fact]
    public void Of_SquareBase_MarginOverTheShiftAcrossTheSide()
    {
        // By hand: centre .02 off the middle of a square of ±.1; shifts of .04 to the front and .02 to the side. To the front .08/.04 = 2,
        // to the back .12/.04 = 3, to the sides .1/.02 = 5.
        var square = BaseOfSupport.Of([new(.1, .1), new(.1, -.1), new(-.1, .1), new(-.1, -.1)]);
        var centre = new Point3(.02, 0, .5);
        var balance = new BodyBalance(centre, square, BalanceMargin.Of(centre, square), new LoadShares([], LoadBasis.NotHeld), 0);
        var room = RoomForError.Of(balance, new CentreSpread(3, .04, .02, 0));
        Assert.Equal(2, room.RoomCount, 1e-12);
        Assert.Equal(.1, balance.Margin.Edges[room.TightestEdge].From.XH, 1e-12);
        Assert.Equal(.1, balance.Margin.Edges[room.TightestEdge].To.XH, 1e-12);
    }

    [Fact]
    public void Of_TwiceTheError_HalfTheRoom()
    {
        var body = SettledBody.Of(Pose.Upright, Feet);
        var balance = BodyBalance.Of(body);
        var once = RoomForError.Of(balance, CentreSpread.Of(Pose.Upright, body, 2));
        var twice = RoomForError.Of(balance, CentreSpread.Of(Pose.Upright, body, 4));
        Assert.Equal(once.RoomCount, 2 * twice.RoomCount, 1e-9);
        Assert.Equal(once.TightestEdge, twice.TightestEdge);
    }

    [Fact]
    public void AlongH_OfAnyDirection_AsFromThePrincipalAxes() => Gen.Double[0, 6.28].Sample(turnRad =>
    {
        // The variance of u·x is the same however it is put together: here from the principal axes of the covariance.
        var spread = new CentreSpread(3, .03, .01, .0002);
        var (mean, half) = ((.0009 + .0001) / 2, Math.Sqrt(Math.Pow((.0009 - .0001) / 2, 2) + .0002 * .0002));
        var axisRad = Math.Atan2(2 * .0002, .0009 - .0001) / 2;
        var expected = (mean + half) * Math.Pow(Math.Cos(turnRad - axisRad), 2) + (mean - half) * Math.Pow(Math.Sin(turnRad - axisRad), 2);
        Assert.Equal(Math.Sqrt(expected), spread.AlongH(new Point2(Math.Cos(turnRad), Math.Sin(turnRad))), 1e-12);
    });
}
