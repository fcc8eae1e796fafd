using Google.OrTools.Sat;
using Slantwise.Engines.Planning.Groups;

namespace Slantwise.Bench.Planning;

/// <summary>The same request for CP-SAT: a switch for each pupil and group.</summary>
internal static class OtherSolver
{
    /// <summary>The most wishes that can be met, and whether that is proved.</summary>
    public static (int? MetCount, bool IsProved) MostMet(GroupRequest request, double limitS)
    {
        var (model, places) = Places(request);
        var met = request.Wishes.Select(w =>
        {
            var isMet = model.NewBoolVar("");
            Add(model, places, request, w, isMet);
            return isMet;
        }).ToArray();
        model.Maximize(LinearExpr.Sum(met));
        var (solver, status) = Solved(model, limitS);
        return (status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? (int)Math.Round(solver.ObjectiveValue) : null, status == CpSolverStatus.Optimal);
    }

    /// <summary>The division nearest to the goal that meets some wishes; none where none was found. For groups of equal size: then squares of sums are what differs.</summary>
    public static (int[]? GroupOf, bool IsProved) Nearest(GroupRequest request, IEnumerable<int> wishes, double limitS)
    {
        var (model, places) = Places(request);
        var yes = model.NewConstant(1);
        foreach (var w in wishes)
        {
            var isMet = model.NewBoolVar("");
            model.Add(isMet == yes);
            Add(model, places, request, request.Wishes[w], isMet);
        }
        var experience = request.Pupils.Select(p => (int)Math.Round(p.ExperienceFraction!.Value * 20)).ToArray();
        var squares = Enumerable.Range(0, request.Sizes.Count).Select(g =>
        {
            var (sum, square) = (model.NewIntVar(0, experience.Sum(), ""), model.NewIntVar(0, (long)experience.Sum() * experience.Sum(), ""));
            model.Add(sum == LinearExpr.Sum(experience.Select((e, p) => places[p, g] * e)));
            model.AddMultiplicationEquality(square, sum, sum);
            return square;
        }).ToArray();
        if (request.Goal == GroupGoal.Mix) model.Minimize(LinearExpr.Sum(squares));
        else model.Maximize(LinearExpr.Sum(squares));
        var (solver, status) = Solved(model, limitS);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible)) return (null, false);
        return ([.. Enumerable.Range(0, experience.Length).Select(p => Enumerable.Range(0, request.Sizes.Count).First(g => solver.BooleanValue(places[p, g])))], status == CpSolverStatus.Optimal);
    }

    private static (CpSolver Solver, CpSolverStatus Status) Solved(CpModel model, double limitS)
    {
        var solver = new CpSolver { StringParameters = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"num_workers:1,random_seed:1,max_time_in_seconds:{limitS}") };
        return (solver, solver.Solve(model));
    }

    private static (CpModel Model, BoolVar[,] Places) Places(GroupRequest request)
    {
        var (model, pupils, groups) = (new CpModel(), request.Pupils.Count, request.Sizes.Count);
        var places = new BoolVar[pupils, groups];
        for (var p = 0; p < pupils; p++)
        {
            for (var g = 0; g < groups; g++) places[p, g] = model.NewBoolVar("");
            var own = p;
            model.AddExactlyOne(Enumerable.Range(0, groups).Select(g => (ILiteral)places[own, g]));
        }
        for (var g = 0; g < groups; g++)
        {
            var group = g;
            model.AddLinearConstraint(LinearExpr.Sum(Enumerable.Range(0, pupils).Select(p => places[p, group])), request.Sizes[g].Least, request.Sizes[g].Most);
        }
        foreach (var place in request.Locks) model.Add(places[place.Pupil, place.Group] == 1);
        return (model, places);
    }

    private static void Add(CpModel model, BoolVar[,] places, GroupRequest request, GroupWish wish, BoolVar isMet)
    {
        if (wish.Kind == GroupWishKind.SupporterIn)
        {
            model.AddBoolOr(Enumerable.Range(0, request.Pupils.Count).Where(p => request.Pupils[p].MaySupport).Select(p => (ILiteral)places[p, wish.First]).Append(isMet.Not()));
            return;
        }
        for (var g = 0; g < request.Sizes.Count; g++)
        {
            if (wish.Kind == GroupWishKind.Together) model.Add(places[wish.First, g] == places[wish.Second, g]).OnlyEnforceIf(isMet);
            else model.AddBoolOr([places[wish.First, g].Not(), places[wish.Second, g].Not(), isMet.Not()]);
        }
    }
}
