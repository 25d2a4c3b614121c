#include "tests/support/covering.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include <glpk.h>

namespace bathside::plan::test {
namespace {

struct Column {
    double doses = 0;
    double volume = 0;
    double birds = 0;
    std::optional<Count> count;
};

Column columnOf(const DayInput& input, const Line& line, const BagStock& bag)
{
    const Count charged = (bag.volume.count + input.dose.count - 1) / input.dose.count;
    Count doses = 0;
    for (const Component& component : input.recipe) {
        const Count perAmpoule = component.lots.front().doses;
        doses += (charged + perAmpoule - 1) / perAmpoule * perAmpoule;
    }
    const Count held =
        std::max<Count>(bag.volume.count - input.residual.count, 0) / input.dose.count;
    const Count time =
        (input.useLimit - input.hangTime - input.diluteTime - input.benchSlack).count() - 1;
    const Count inTime = std::max<Count>(time, 0) * line.ratePerHour / 3'600'000;
    return {static_cast<double>(doses), static_cast<double>(bag.volume.count),
            static_cast<double>(std::min(held, inTime)), bag.count};
}

class Programme {
public:
    Programme(const std::vector<Column>& columns, Count birds)
        : m_columns(columns), m_problem(glp_create_prob())
    {
        glp_term_out(GLP_OFF);
        glp_add_cols(m_problem, static_cast<int>(columns.size()));
        for (std::size_t i = 0; i < columns.size(); ++i) {
            const int bounds =
                !columns[i].count ? GLP_LO : (*columns[i].count == 0 ? GLP_FX : GLP_DB);
            glp_set_col_kind(m_problem, number(i), GLP_IV);
            glp_set_col_bnds(m_problem, number(i), bounds, 0,
                             static_cast<double>(columns[i].count.value_or(0)));
        }
        addRow(&Column::birds, GLP_LO, static_cast<double>(birds));
    }
    ~Programme() { glp_delete_prob(m_problem); }
    Programme(const Programme&) = delete;
    Programme& operator=(const Programme&) = delete;

    /// The least sum of `of`, which then stays so; none: there is no solution.
    template <typename Of>
    std::optional<Count> least(Of of)
    {
        for (std::size_t i = 0; i < m_columns.size(); ++i)
            glp_set_obj_coef(m_problem, number(i), std::invoke(of, m_columns[i]));
        glp_iocp how;
        glp_init_iocp(&how);
        how.presolve = GLP_ON;
        if (glp_intopt(m_problem, &how) != 0 || glp_mip_status(m_problem) != GLP_OPT)
            return std::nullopt;
        const double least = std::round(glp_mip_obj_val(m_problem));
        addRow(of, GLP_FX, least);
        return static_cast<Count>(least);
    }

private:
    static int number(std::size_t i) { return static_cast<int>(i) + 1; }

    template <typename Of>
    void addRow(Of of, int bounds, double value)
    {
        std::vector<int> columns{0};
        std::vector<double> values{0};
        for (std::size_t i = 0; i < m_columns.size(); ++i) {
            columns.push_back(number(i));
            values.push_back(std::invoke(of, m_columns[i]));
        }
        const int row = glp_add_rows(m_problem, 1);
        glp_set_row_bnds(m_problem, row, bounds, value, value);
        glp_set_mat_row(m_problem, row, static_cast<int>(m_columns.size()), columns.data(),
                        values.data());
    }

    const std::vector<Column>& m_columns;
    glp_prob* m_problem;
};

}  // namespace

std::optional<Cost> solvedAsCovering(const DayInput& input, const Line& line)
{
    std::vector<Column> columns;
    for (const BagStock& bag : input.bags)
        columns.push_back(columnOf(input, line, bag));
    if (columns.empty())
        return line.birds == 0 ? std::optional(Cost{}) : std::nullopt;
    Programme programme(columns, line.birds);
    const auto doses = programme.least(&Column::doses);
    if (!doses)
        return std::nullopt;
    const auto bags = programme.least([](const Column&) { return 1.0; });
    const auto volume = programme.least(&Column::volume);
    return bags && volume ? std::optional(Cost{*doses, *bags, *volume}) : std::nullopt;
}

}  // namespace bathside::plan::test
