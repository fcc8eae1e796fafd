using Slantwise.Desk.Pages.Evidence;
using Slantwise.Records.Evidence.Growth;

namespace Slantwise.Surface.Tests.Desk.Evidence;

public sealed class MoveTextTests
{
    [Fact]
    public void Short_Moves_LeaveOutWaysNobodyWent()
    {
        using var english = new Spoken("en-GB");
        Assert.Equal("9 to harder, 12 ended where they began", MoveText.Short(new LevelMoves(9, 0, 0, 12, 10, [])));
        Assert.Equal("21 pupils with two sets or more", MoveText.Count(new LevelMoves(9, 0, 0, 12, 10, [])));
        Assert.Equal("nothing to compare yet", MoveText.Short(new LevelMoves(0, 0, 0, 0, 0, [])));
    }

    [Fact]
    public void Short_Predictions_SayWhatCameAsPredictedFirst()
    {
        using var english = new Spoken("en-GB");
        Assert.Equal("73 sets as predicted, in 27 more was predicted, in 8 fewer was predicted", MoveText.Short(new PredictionSides(27, 73, 8, [])));
        Assert.Equal("nothing to compare yet", MoveText.Short(new PredictionSides(0, 0, 0, [])));
    }

    [Fact]
    public void Short_InSpanish_IsNotEnglish()
    {
        using var spanish = new Spoken("es-ES");
        Assert.Equal("9 a más difícil, 12 acabaron donde empezaron", MoveText.Short(new LevelMoves(9, 0, 0, 12, 10, [])));
    }
}
