// SPDX-License-Identifier: GPL-3.0-or-later
// The only file here that includes Boost's quadrature: it is slow to compile.
#include "models/reliability/integrate.h"

#include <boost/math/quadrature/gauss_kronrod.hpp>

#include <algorithm>
#include <array>
#include <cmath>

namespace cutwater::reliability {

namespace {

// Nodes on (-1, 1), ascending, with the weights of both rules; the Gauss weight is 0 at the others.
struct Node {
    double x = 0, kronrod = 0, gauss = 0;
};

std::array<Node, 15> makeNodes() {
    using Kronrod = boost::math::quadrature::gauss_kronrod<double, 15>;
    using Gauss = boost::math::quadrature::gauss<double, 7>;
    const auto& abscissa = Kronrod::abscissa(); // 0 and up, the even ones are also Gauss nodes
    const auto& weights = Kronrod::weights();
    const auto& gauss = Gauss::weights();
    std::array<Node, 15> nodes;
    for (std::size_t i = 0; i < abscissa.size(); ++i) {
        const double shared = i % 2 == 0 ? gauss[i / 2] : 0;
        nodes[7 - i] = {-abscissa[i], weights[i], shared};
        nodes[7 + i] = {abscissa[i], weights[i], shared};
    }
    return nodes;
}

struct Piece {
    double begin = 0, end = 0;
    int halvings = 0;
};

class Integrator {
public:
    Integrator(std::size_t functions, const Integrand& integrand, const IntegralWish& wish)
        : m_integrand(integrand), m_wish(wish), m_values(functions), m_kronrod(functions),
          m_gauss(functions) {
        m_result.values.assign(functions, 0);
        m_result.errors.assign(functions, 0);
    }

    Integral run(std::span<const double> cuts) {
        for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
            if (m_wish.stop.stop_requested()) {
                m_result.stopped = true;
                break;
            }
            m_pieces.push_back({cuts[i], cuts[i + 1], 0});
            while (!m_pieces.empty())
                step();
            if (m_wish.piece) m_wish.piece(cuts[i + 1], m_result.values);
            if (m_wish.progress)
                m_wish.progress(static_cast<double>(i + 1) / static_cast<double>(cuts.size() - 1));
        }
        return std::move(m_result);
    }

private:
    void step() {
        const Piece piece = m_pieces.back();
        m_pieces.pop_back();
        const double half = (piece.end - piece.begin) / 2;
        const double middle = piece.begin + half;
        if (!(half > 0)) return;
        std::fill(m_kronrod.begin(), m_kronrod.end(), 0.0);
        std::fill(m_gauss.begin(), m_gauss.end(), 0.0);
        for (const Node& node : m_nodes) {
            m_integrand(middle + half * node.x, m_values);
            for (std::size_t f = 0; f < m_values.size(); ++f) {
                m_kronrod[f] += half * node.kronrod * m_values[f];
                m_gauss[f] += half * node.gauss * m_values[f];
            }
        }
        if (piece.halvings < m_wish.halvings && !agree()) {
            // The later half first, so that the pieces come in order.
            m_pieces.push_back({middle, piece.end, piece.halvings + 1});
            m_pieces.push_back({piece.begin, middle, piece.halvings + 1});
            return;
        }
        for (std::size_t f = 0; f < m_values.size(); ++f) {
            m_result.values[f] += m_kronrod[f];
            m_result.errors[f] += std::abs(m_kronrod[f] - m_gauss[f]);
        }
    }

    bool agree() const {
        for (std::size_t f = 0; f < std::min(m_wish.controlled, m_values.size()); ++f)
            if (std::abs(m_kronrod[f] - m_gauss[f]) >
                m_wish.relative * (std::abs(m_kronrod[f]) + 1e-3 * std::abs(m_result.values[f])))
                return false;
        return true;
    }

    const Integrand& m_integrand;
    const IntegralWish& m_wish;
    const std::array<Node, 15> m_nodes = makeNodes();
    std::vector<double> m_values, m_kronrod, m_gauss;
    std::vector<Piece> m_pieces;
    Integral m_result;
};

} // namespace

Integral integrate(std::span<const double> cuts, std::size_t functions, const Integrand& integrand,
                   const IntegralWish& wish) {
    return Integrator(functions, integrand, wish).run(cuts);
}

} // namespace cutwater::reliability
