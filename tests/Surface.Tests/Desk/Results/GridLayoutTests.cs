using Slantwise.Desk.Pages.Results;
using Slantwise.Records.Sheets;

namespace Slantwise.Surface.Tests.Desk.Results;

public sealed class GridLayoutTests
{
    private static readonly GridLayout Layout = GridLayout.Of(SampleLesson.Sheet(tasks: [SampleLesson.Balance, SampleLesson.Rope]));

    [Fact]
    public void Of_TwoTasks_LeavesOutColumnsNotAskedFor()
    {
        Assert.Equal(6, Layout.Rows.Count);
        Assert.Equal(10, Layout.Rows[0].Cells.Count);
        Assert.DoesNotContain(Layout.Rows[3].Cells, cell => cell.Kind == CellKind.Cues);
        Assert.DoesNotContain(GridLayout.Of(SampleLesson.Sheet(PredictionKind.Nothing)).Cells, cell => cell.Kind == CellKind.Prediction);
    }

    [Fact]
    public void After_FromTheFirstCell_VisitsEveryCellOnceAndBeforeLeadsBack()
    {
        List<GridCell> visited = [Layout.Cells[0]];
        while (Layout.After(visited[^1]) is { } next)
        {
            Assert.Equal(visited[^1], Layout.Before(next));
            visited.Add(next);
        }
        Assert.Equal(Layout.Cells, visited);
    }

    [Fact]
    public void Below_LastSetOfATask_GoesOnInTheNextTask()
    {
        Assert.Equal(new GridCell(2, 1, CellKind.Trial, 4), Layout.Below(new(1, 3, CellKind.Trial, 4)));
        Assert.Equal(new GridCell(1, 3, CellKind.Trial, 4), Layout.Above(new(2, 1, CellKind.Trial, 4)));
        Assert.Null(Layout.Below(new(1, 3, CellKind.Cues)));
        Assert.Null(Layout.Below(new(2, 3, CellKind.Level)));
    }

    [Fact]
    public void Onward_FromTheDecision_GoesToTheNextSet()
    {
        Assert.Equal(new GridCell(1, 2, CellKind.Level), Layout.Onward(new(1, 1, CellKind.Decision)));
        Assert.Equal(new GridCell(1, 1, CellKind.Decision), Layout.Onward(new(1, 1, CellKind.Cues)));
        Assert.Null(Layout.Onward(new(2, 3, CellKind.Reason)));
    }

    [Theory]
    [InlineData("1.2.Trial.3", true)]
    [InlineData("1.2.trial.3", false)]
    [InlineData("1.2.9.3", false)]
    [InlineData("01.2.Trial.3", false)]
    [InlineData("1.2.Trial", false)]
    [InlineData("", false)]
    public void FromKey_Text_IsReadOnlyAsItIsWritten(string key, bool isCell) =>
        Assert.Equal(isCell, GridCell.FromKey(key) is not null);
}
