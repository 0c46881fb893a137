@book{a, title = {Arches}}
@book{a, title = {Arches}}
@book{a, title = {Arches}}
