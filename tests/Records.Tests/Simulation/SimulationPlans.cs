using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Simulation;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Tests.Simulation;

/// <summary>Small plans that tests vary.</summary>
internal static class SimulationPlans
{
    public static readonly DateOnly Day = new(2026, 3, 2);

    public static SimulationPlan Unit(ulong seed = 7, int pupils = 28, int lessons = 5) => InventedUnit.PlanFor(seed, pupils, lessons, Day);

    /// <summary>One task whose levels are given, one lesson; everything on paper is complete, and nobody learns or tires.</summary>
    public static SimulationPlan OneTask(ulong seed, int pupils, int sets, int trials, PredictionKind predicts, params Level[] levels)
    {
        var unit = InventedUnit.PlanFor(seed, pupils, 1, Day);
        var task = new SheetTask { TaskId = Id(99), Name = "Plank", Cues = ["My body is one straight line."], Levels = levels };
        var content = new SheetContent { Title = "Plank", Tasks = [task], SetCount = sets, TrialCount = trials, Predicts = predicts };
        return unit with
        {
            Lessons = [unit.Lessons[0] with { Content = content }],
            Mess = PaperMess.None,
            Population = new PupilPopulation { LearningLogits = 0, LearningSdLogits = 0, FatigueLogits = 0 },
        };
    }

    public static Level Hold(int number, decimal doseS) => new() { Id = Id(number), Name = $"Form {number}", Dose = new(DoseKind.HoldS, doseS) };

    private static Guid Id(int number) => new($"019ba208-0000-7000-8000-{number:000000000000}");
}
